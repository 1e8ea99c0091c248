import { zstdCompressSync } from "node:zlib";
import { expect, it } from "vitest";
import { canonicalJson } from "#server/domain/canonical-json.ts";
import { isProblem } from "#server/domain/problem.ts";
import { aCommit, adding, aSource, aTerm, replacing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { onNeo4j } from "#tests/support/neo4j/on-neo4j.ts";

const saw = aTerm("tool.saw", { broader: "tool.any" });
const claim = aClaim({
  ...{ id: "claim.1", relation: "requires", subject: "feature.mark", ways: [["tool.saw"]] },
  citations: [{ basis: "published", source: "source.book" as never, locator: "p. 1" }],
});
const exception = aClaim({ id: "claim.2", relation: "void when", of: "claim.1", condition: "feature.mark" });

onNeo4j("verifying what lies on a Neo4j server", (server) => {
  /** Verifies a store of three revisions and an examination after a statement that changes it from outside. */
  const verifiedAfter = async (statement: string) => {
    const address = server.address();
    const store = await server.open(address);
    answered(
      await store.commit(
        aCommit(adding(aTerm("tool.any"), saw, aTerm("feature.mark"), aSource("source.book"))),
      ),
    );
    answered(await store.commit(aCommit(adding(claim, exception))));
    answered(await store.commit(aCommit(replacing(saw, { ...saw, note: "Toothed." }))));
    answered(await store.createExamination("examination.a" as never, aPiece(), "2026-11-25T10:00:00.000Z"));
    answered(
      await store.changeExamination("examination.a" as never, 1, aPiece(), "2026-11-25T10:01:00.000Z"),
    );
    expect(await store.verify()).toMatchObject({ revisions: 3 });
    const changed = await server.run(`${statement} RETURN 1`, { s: address.store });
    expect(changed.length, "the statement must change something").toBeGreaterThan(0);
    const verified = await store.verify();
    await store.close();
    if (!isProblem(verified)) throw new Error("It verified although it was changed");
    return verified;
  };

  it.each([
    [
      1,
      "MATCH (v:TermVersion {store: $s, id: 'tool.saw', since: 1}) SET v.body = replace(v.body, 'saw', 'axe')",
    ],
    [
      3,
      "MATCH (v:TermVersion {store: $s, id: 'tool.saw', since: 3}) SET v.body = replace(v.body, 'Toothed', 'Blunt')",
    ],
    [1, "MATCH (v:TermVersion {store: $s, since: 1})-[b:BROADER]->() DELETE b"],
    [1, "MATCH (v:TermVersion {store: $s, id: 'tool.any'}) SET v.until = 2"],
    [1, "MATCH (v:TermVersion {store: $s, id: 'tool.any'}) SET v.extra = 1"],
    [3, "MATCH (v:TermVersion {store: $s, since: 3}) DETACH DELETE v"],
    [1, "CREATE (:TermVersion {store: $s, id: 'tool.new', since: 1, until: 9, kind: 'tool', body: '{}'})"],
    [2, "MATCH (v:ClaimVersion {store: $s, id: 'claim.1'}) SET v.accepted = false"],
    [2, "MATCH (:Term {store: $s})-[l:LEADS]->() DELETE l"],
    [
      2,
      "MATCH (v:ClaimVersion {store: $s})-[n:NEEDS]->(), (t:Term {store: $s, id: 'tool.any'}) CREATE (v)-[:NEEDS]->(t)",
    ],
    [2, "MATCH (:ClaimVersion {store: $s})-[c:CITES]->() SET c.locator = 'p. 2'"],
    [2, "MATCH (:ClaimVersion {store: $s})-[e:EXCEPTS]->() DELETE e"],
    [2, "MATCH (v:ClaimVersion {store: $s, id: 'claim.1'})-[o:OF]->() DELETE o"],
    [1, "MATCH (r:Revision {store: $s, number: 1}) SET r.message = 'other'"],
    [2, "MATCH (p:ChangePart {store: $s, revision: 2}) SET p.edits = replace(p.edits, 'p. 1', 'p. 2')"],
    [3, "MATCH (p:ChangePart {store: $s, revision: 3}) SET p.edits = 'not JSON'"],
    [2, "MATCH (p:ChangePart {store: $s, revision: 2}) DELETE p"],
    [1, "MATCH (r:Revision {store: $s, number: 1}) DELETE r"],
    [3, "MATCH (r:Revision {store: $s, number: 3}) DELETE r"],
  ])("[S6] names revision %i after %s", async (revision, statement) => {
    expect(await verifiedAfter(statement)).toMatchObject({
      code: "STORE_CORRUPT",
      path: ["revision", revision],
    });
  });

  it.each([
    "MATCH (v:ExaminationVersion {store: $s, version: 1}) DELETE v",
    "MATCH (v:ExaminationVersion {store: $s, version: 2}) DELETE v",
    "MATCH (e:Examination {store: $s}) SET e.version = 1",
    "MATCH (e:Examination {store: $s}) DELETE e",
  ])("[S6] finds a gap in the versions of an examination after %s", async (statement) => {
    const { code, message } = await verifiedAfter(statement);
    expect(code).toBe("STORE_CORRUPT");
    expect(message).toContain("examination.a");
  });

  it("[S6] names the revision whose packed edits were changed, or can no longer be unpacked", async () => {
    const address = server.address();
    const store = await server.open(address);
    const terms = Array.from({ length: 100 }, (_, n) => aTerm(`tool.t${n}`, { note: "n".repeat(100) }));
    answered(await store.commit(aCommit(adding(...terms))));
    expect(await store.changeAt(1)).toEqual(adding(...terms));
    expect(await store.verify()).toMatchObject({ revisions: 1 });
    const other = zstdCompressSync(canonicalJson(adding(...terms.slice(1))));
    for (const bytes of [other, other.subarray(0, 20)]) {
      const [row] = await server.run(
        "MATCH (p:ChangePart {store: $s, revision: 1}) SET p.packed = $packed RETURN p.edits AS edits",
        { s: address.store, packed: new Int8Array(bytes.buffer, bytes.byteOffset, bytes.length) },
      );
      expect(row).toEqual({ edits: null });
      expect(await store.verify()).toMatchObject({ code: "STORE_CORRUPT", path: ["revision", 1] });
    }
    await store.close();
  });
});
