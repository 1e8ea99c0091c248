import { DatabaseSync } from "node:sqlite";
import { describe, expect, it } from "vitest";
import type { Problem } from "#server/domain/problem.ts";
import type { Store } from "#server/ports/store.ts";
import { StoreFailed } from "#server/ports/store-failed.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { aCommit, adding, aSource, aTerm, replacing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered, refusedWith } from "#tests/support/expect-answer.ts";
import { dumpOf } from "#tests/support/read-all.ts";
import { temporaryPath } from "#tests/support/temporary-store.ts";

const saw = aTerm("tool.saw", { broader: "tool.any" });

/** A store of three revisions and an examination, closed. */
const aCardWritten = {
  cards: [
    { kind: "comment", id: "one", expectedVersion: 0, next: { keys: { on: ["a", "b"] }, body: "Which?" } },
  ],
  deed: { by: "person.a", at: "2026-11-25T10:02:00.000Z", did: "write a comment" },
};
async function filledFile(): Promise<string> {
  const path = temporaryPath();
  const store = answered(await openSqliteStore(path));
  const things = [aTerm("tool.any"), saw, aTerm("feature.mark"), aSource("source.book")];
  answered(await store.commit(aCommit(adding(...things))));
  const claim = aClaim({
    ...{ id: "claim.1", relation: "requires", subject: "feature.mark", ways: [["tool.saw"]] },
    citations: [{ basis: "published", source: things[3]?.id as never, locator: "p. 1" }],
  });
  const exception = aClaim({
    id: "claim.2",
    relation: "void when",
    of: "claim.1",
    condition: "feature.mark",
  });
  answered(await store.commit(aCommit(adding(claim, exception))));
  answered(await store.commit(aCommit(replacing(saw, { ...saw, note: "Toothed." }))));
  answered(await store.createExamination("examination.a" as never, aPiece(), "2026-11-25T10:00:00.000Z"));
  answered(await store.changeExamination("examination.a" as never, 1, aPiece(), "2026-11-25T10:01:00.000Z"));
  answered(await store.writeCards(aCardWritten));
  await store.close();
  return path;
}

async function verifiedAfter(path: string, sql: string): Promise<Problem> {
  const raw = new DatabaseSync(path);
  const { changes } = raw.prepare(sql).run();
  raw.close();
  expect(changes, "the statement must change something").toBeGreaterThan(0);
  const store = answered(await openSqliteStore(path));
  const verified = await store.verify();
  await store.close();
  if (!("problem" in verified)) throw new Error("The store verified although it was changed");
  return verified;
}

describe("[S6] verify names the revision whose content was changed by hand:", () => {
  it.each([
    [1, "UPDATE term SET body = replace(body, 'saw', 'axe') WHERE id = 'tool.saw' AND since = 1"],
    [3, "UPDATE term SET body = replace(body, 'Toothed', 'Blunt') WHERE id = 'tool.saw' AND since = 3"],
    [1, "UPDATE term SET broader = NULL WHERE since = 1 AND id = 'tool.saw'"],
    [1, "UPDATE term SET until = until - 1 WHERE id = 'tool.any'"],
    [3, "DELETE FROM term WHERE since = 3"],
    [1, "INSERT INTO term (id, since, until, kind, body) VALUES ('tool.new', 1, 9, 'tool', '{}')"],
    [2, "UPDATE claim SET body = replace(body, 'firm', 'usual') || ' ' WHERE id = 'claim.1'"],
    [2, "UPDATE claim SET relation = 'attested' WHERE id = 'claim.1'"],
    [1, "UPDATE source SET body = replace(body, 'read', 'known') || ' '"],
    [2, "DELETE FROM statement"],
    [2, "UPDATE lead SET target = 'tool.any'"],
    [2, "UPDATE exception SET accepted = 0"],
    [2, "DELETE FROM naming WHERE kind = 'source'"],
    [1, "UPDATE revision SET message = 'other' WHERE number = 1"],
    [2, "UPDATE revision SET at = '2020-01-01T00:00:00.000Z' WHERE number = 2"],
    [2, "UPDATE revision SET change = replace(change, 'p. 1', 'p. 2') WHERE number = 2"],
    [3, "UPDATE revision SET change = 'not JSON' WHERE number = 3"],
    [1, "DELETE FROM revision WHERE number = 1"],
    [2, "DELETE FROM revision WHERE number = 2"],
    [3, "UPDATE revision SET previous = hash WHERE number = 3"],
  ])("revision %i after %s", async (revision, sql) => {
    const { code, path, message } = await verifiedAfter(await filledFile(), sql);
    expect(code).toBe("STORE_CORRUPT");
    expect(path).toEqual(["revision", revision]);
    expect(message).toContain(`Revision ${revision} does not check`);
  });
});

it("[S6] finds a change that was rewritten with all its own hashes, by the next revision", async () => {
  const path = await filledFile();
  const forged = temporaryPath();
  const other = answered(await openSqliteStore(forged));
  answered(await other.commit(aCommit(adding(aTerm("tool.forged")))));
  await other.close();
  const sql = `WITH forged AS (SELECT * FROM other.revision) UPDATE revision
    SET (content, hash, change) = (SELECT content, hash, change FROM forged) WHERE number = 1`;
  const raw = new DatabaseSync(path);
  raw.exec(`ATTACH '${forged}' AS other; ${sql}`);
  raw.close();
  const store = answered(await openSqliteStore(path));
  expect(await store.verify()).toMatchObject({ code: "STORE_CORRUPT", path: ["revision", 2] });
  await store.close();
});

it("[S6] [S46] [S68] finds a ledger that is not what was written", async () => {
  for (const sql of [
    "DELETE FROM write WHERE sequence = 2",
    "DELETE FROM write WHERE sequence = 5",
    "INSERT INTO write (sequence, revision, restored) VALUES (7, 3, 0)",
    "INSERT INTO write (sequence, revision, restored) VALUES (7, 4, 0)",
    "DELETE FROM write WHERE sequence = 6",
    `UPDATE write SET deed = replace(deed, 'person.a', 'person.b')`,
    "UPDATE write SET deed = NULL",
    "UPDATE write SET hash = previous WHERE sequence = 2",
    "UPDATE write SET restored = 1 WHERE sequence = 3",
    "UPDATE write SET version = 1 WHERE sequence = 5",
    "UPDATE write SET examination = 'examination.b' WHERE sequence = 4",
    "UPDATE write SET revision = 3 - revision WHERE revision < 3",
  ]) {
    const { code, message } = await verifiedAfter(await filledFile(), sql);
    expect(`${code} ${sql}`).toBe(`STORE_CORRUPT ${sql}`);
    expect(message).toMatch(/ledger|card/);
  }
});

it("[S6] [S67] finds a card that is not as it was written, and one that is not found by its keys", async () => {
  for (const sql of [
    `UPDATE card SET body = '"other"'`,
    "UPDATE card SET version = 2",
    `UPDATE card SET keys = '{"on":["b"]}'`,
    "UPDATE card SET id = 'two'",
    "DELETE FROM card",
    `INSERT INTO card (kind, id, version, keys, body) VALUES ('comment', 'two', 1, '{}', '1')`,
    "DELETE FROM card_key",
    "UPDATE card_key SET value = 'other' WHERE value = 'a'",
    "INSERT INTO card_key (kind, name, value, id) VALUES ('comment', 'on', 'c', 'one')",
  ]) {
    const { code, message } = await verifiedAfter(await filledFile(), sql);
    expect(`${code} ${sql}`).toBe(`STORE_CORRUPT ${sql}`);
    expect(message).toMatch(/the card comment/);
  }
});

it("[S6] [S68] finds a piece that was changed in the file", async () => {
  const { code, message } = await verifiedAfter(
    await filledFile(),
    `UPDATE examination SET piece = replace(piece, '"title":"', '"title":"other ')`,
  );
  expect(code).toBe("STORE_CORRUPT");
  expect(message).toContain("of examination examination.a, which write");
});

it("[S6] finds a gap in the versions of an examination", async () => {
  for (const sql of [
    "DELETE FROM examination WHERE version = 1",
    "DELETE FROM examination WHERE version = 2",
    "UPDATE examination SET newest = 1 WHERE version = 1",
  ]) {
    const { code, message } = await verifiedAfter(await filledFile(), sql);
    expect(code).toBe("STORE_CORRUPT");
    expect(message).toContain("examination.a");
  }
});

describe("[T8] verify finds a version of an examination that is not what was written:", () => {
  it.each([
    "UPDATE examination SET piece = replace(piece, 'A piece', 'A peace') WHERE version = 2",
    "UPDATE examination SET piece = 'no JSON' WHERE version = 1",
    "UPDATE examination SET changed_at = '2020-01-01T00:00:00.000Z' WHERE version = 1",
    "UPDATE examination SET undo_to = NULL WHERE version = 2",
    "UPDATE examination SET deleted = 1 WHERE version = 2",
  ])("%s", async (sql) => {
    const { code, message } = await verifiedAfter(await filledFile(), sql);
    expect(code).toBe("STORE_CORRUPT");
    expect(message).toMatch(
      /examination\.a, which write \d of the ledger made, is not what was written|does not hold/,
    );
  });
});

describe("[T8] a text that was damaged is STORE_CORRUPT", () => {
  const damaged = async (sql: string): Promise<Store> => {
    const path = await filledFile();
    const raw = new DatabaseSync(path);
    raw.exec(sql);
    raw.close();
    return answered(await openSqliteStore(path));
  };
  const failure = async (read: Promise<unknown>): Promise<string> => {
    const error: unknown = await read.then(
      () => undefined,
      (thrown: unknown) => thrown,
    );
    return error instanceof StoreFailed ? error.problem.code : String(error);
  };

  it("for reads, a dump, and a write that reads it", async () => {
    const store = await damaged(
      "UPDATE examination SET piece = substr(piece, 9) WHERE version = 2; UPDATE term SET body = substr(body, 9)",
    );
    expect(await failure(store.examination("examination.a" as never))).toBe("STORE_CORRUPT");
    expect(await failure(store.terms([saw.id]))).toBe("STORE_CORRUPT");
    expect(await failure(dumpOf(store))).toBe("STORE_CORRUPT");
    const narrower = aTerm("tool.fret-saw", { broader: "tool.saw" });
    expect(refusedWith(await store.commit(aCommit(adding(narrower))))).toBe("STORE_CORRUPT");
    await store.close();
  });
});
