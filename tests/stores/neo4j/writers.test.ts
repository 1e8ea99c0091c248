import { expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aCommit, adding, aTerm, replacing } from "#tests/support/build-change.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered, refusedWith } from "#tests/support/expect-answer.ts";
import { onNeo4j } from "#tests/support/neo4j/on-neo4j.ts";
import { dumpOf } from "#tests/support/read-all.ts";

const saw = aTerm("tool.saw");
const at = "2026-11-25T10:00:00.000Z";
const code = (answer: object): unknown => ("problem" in answer ? (answer as { code?: string }).code : "done");

onNeo4j("several programs on one store", (server) => {
  /** Two connections of their own, as two programs have. */
  const two = async (options = {}): Promise<readonly [Store, Store, string]> => {
    const address = server.address();
    return [await server.open(address, options), await server.open(address, options), address.store];
  };

  it("[S44] lets one of two changes of one thing through, whoever comes first", async () => {
    const [one, other] = await two();
    answered(await one.commit(aCommit(adding(saw))));
    let stands = saw;
    for (let round = 2; round < 8; round++) {
      const notes = [`one ${round}`, `other ${round}`].map((note) => aTerm("tool.saw", { note }));
      const answers = await Promise.all(
        [one, other].map((store, n) => store.commit(aCommit(replacing(stands, notes[n] as typeof saw)))),
      );
      expect(answers.map(code).sort()).toEqual(["STALE_CHANGE", "done"]);
      stands = (await one.terms([saw.id])).get(saw.id) as typeof saw;
      expect(stands).toEqual(notes[answers.findIndex((answer) => code(answer) === "done")]);
    }
    expect(await other.verify()).toMatchObject({ revisions: 7 });
    await one.close();
    await other.close();
  });

  it("[S44] keeps every write of many at once, in one order without a gap", async () => {
    const [one, other] = await two();
    const writes = Array.from({ length: 24 }, (_, n) => {
      const store = n % 2 === 0 ? one : other;
      return n % 3 === 0
        ? store.createExamination(id(`examination.e${n}`), aPiece(), at)
        : store.commit(aCommit(adding(aTerm(`tool.t${n}`))));
    });
    expect((await Promise.all(writes)).map(code)).toEqual(writes.map(() => "done"));
    expect(await one.verify()).toMatchObject({ revisions: 16 });
    expect((await other.listExaminations({ first: 50 })).total).toBe(8);
    expect(await dumpOf(one)).toEqual(await dumpOf(other));
    await one.close();
    await other.close();
  });

  it("[S44] sees at once what the other wrote, also in a search", async () => {
    const [one, other] = await two();
    answered(await one.commit(aCommit(adding(saw))));
    expect(await other.search("plane", {}, 5)).toEqual([]);
    answered(await one.commit(aCommit(adding(aTerm("tool.plane")))));
    expect((await other.search("plane", {}, 5)).map(({ term }) => term)).toEqual(["tool.plane"]);
    expect(await other.newestRevision()).toEqual(await one.newestRevision());
    await one.close();
    await other.close();
  });

  it("[S44] shows of what another is just writing all or nothing, at any moment", async () => {
    const [one, other] = await two();
    const things = (n: number) => Array.from({ length: 60 }, (_, k) => aTerm(`tool.t${n}x${k}`));
    const chest = id<"examination">("examination.chest");
    answered(await one.commit(aCommit(adding(...things(1)))));
    answered(await one.createExamination(chest, aPiece(), at));
    let isOver = false;
    let looks = 0;
    const looking = Array.from({ length: 3 }, async () => {
      while (!isOver) {
        const newest = (await other.newestRevision())?.number ?? 0;
        const asked = things(newest).map((term) => term.id);
        expect((await other.terms(asked)).size, `terms of revision ${newest}`).toBe(60);
        expect(await other.changeAt(newest)).toHaveLength(60);
        expect((await other.examination(chest))?.version).toBeGreaterThan(0);
        expect((await other.listExaminations({ first: 5 })).rows).toHaveLength(1);
        const last = (await other.writesAfter((await other.newestWrite()) - 1, 1))[0];
        expect(last).toBeDefined();
        looks++;
      }
    });
    const writing = async () => {
      for (let n = 2; n <= 40; n++) {
        answered(await one.commit(aCommit(adding(...things(n)))));
        answered(await one.changeExamination(chest, n - 1, aPiece(), at));
      }
    };
    await Promise.all([
      writing().finally(() => {
        isOver = true;
      }),
      ...looking,
    ]);
    expect(looks).toBeGreaterThan(20);
    await one.close();
    await other.close();
  });

  it("[S45] refuses to write while another writes much, which nobody sees before it has ended", async () => {
    const [one, other, store] = await two({ patience: 200 });
    answered(await one.commit(aCommit(adding(saw))));
    const before = await dumpOf(one);
    await server.run(
      `MATCH (s:Store {name: $store}) SET s.stagedBy = "another", s.stagedUntil = timestamp() + 60000
       CREATE (t:Term {store: $store, id: "tool.half"})
       CREATE (:TermVersion {store: $store, id: "tool.half", since: 2, until: 2147483647, kind: "tool", body: "{}"})-[:OF]->(t)
       CREATE (:ExaminationVersion {store: $store, id: "examination.half", version: 1, deleted: false, sequence: 2, changedAt: "", piece: "{}"})
       WITH t MATCH (v:TermVersion {store: $store, id: "tool.saw"}) SET v.until = 2`,
      { store },
    );
    expect(refusedWith(await other.commit(aCommit(adding(aTerm("tool.plane")))))).toBe("STORE_LOCKED");
    expect(refusedWith(await other.createExamination(id("examination.a"), aPiece(), at))).toBe(
      "STORE_LOCKED",
    );
    expect(await dumpOf(other)).toEqual(before);
    expect((await other.listTerms({}, { first: 9 })).rows).toEqual([saw]);
    expect(await other.examination(id("examination.half"))).toBeUndefined();
    expect(await other.verify()).toMatchObject({ revisions: 1 });

    await server.run("MATCH (s:Store {name: $store}) SET s.stagedUntil = timestamp() - 1", { store });
    answered(await other.commit(aCommit(replacing(saw, aTerm("tool.saw", { note: "Toothed." })))));
    answered(await one.createExamination(id("examination.half"), aPiece(), at));
    expect(await one.verify()).toMatchObject({ revisions: 2 });
    expect(await dumpOf(one)).toHaveLength(8);
    expect(await server.run("MATCH (n {id: 'tool.half', store: $store}) RETURN n", { store })).toEqual([]);
    await one.close();
    await other.close();
  });

  it("[T10] does not wait for a lease that the clock of the server was set back from", async () => {
    const [one, other, store] = await two({ patience: 200 });
    const lease = async (until: string): Promise<void> => {
      await server.run(
        `MATCH (s:Store {name: $store}) SET s.stagedBy = "another", s.stagedUntil = timestamp() + ${until}`,
        { store },
      );
    };
    await lease("2 * 60000 - 5000");
    expect(refusedWith(await one.commit(aCommit(adding(saw))))).toBe("STORE_LOCKED");
    await lease("24 * 3600000");
    answered(await one.commit(aCommit(adding(saw))));
    expect(await other.verify()).toMatchObject({ revisions: 1 });
    await one.close();
    await other.close();
  });

  it("[S45] waits with a write for one that writes much", async () => {
    const [one, other] = await two({ rowsAtOnce: 50 });
    const terms = Array.from({ length: 400 }, (_, n) => aTerm(`tool.t${n}`));
    const [large, small] = await Promise.all([
      one.commit(aCommit(adding(...terms))),
      new Promise((resolve) => setTimeout(resolve, 50)).then(() => other.commit(aCommit(adding(saw)))),
    ]);
    expect([answered(large).number, answered(small).number].sort()).toEqual([1, 2]);
    expect((await one.listTerms({}, { first: 1 })).total).toBe(401);
    expect(await one.verify()).toMatchObject({ revisions: 2 });
    await one.close();
    await other.close();
  });

  it("[S45] takes a large change and a large dump whole, over several transactions", async () => {
    const [one, other] = await two({ rowsAtOnce: 100 });
    const terms = Array.from({ length: 520 }, (_, n) => aTerm(`tool.t${n}`));
    const first = answered(await one.commit(aCommit(adding(...terms))));
    const noted = terms.flatMap((term) => replacing(term, { ...term, note: "Said otherwise." }));
    answered(await other.commit(aCommit(noted)));
    expect((await one.listTerms({}, { first: 1 })).rows[0]?.note).toBe("Said otherwise.");
    expect((await one.listTerms({}, { first: 1 }, 1)).rows[0]).toEqual(terms[0]);
    expect(await other.changeAt(1)).toEqual(adding(...terms));
    expect(await one.verify()).toMatchObject({ revisions: 2 });

    const memory = openMemoryStore();
    answered(await memory.restore(one.dump()));
    expect(await memory.revision(1)).toEqual(first);
    const third = await server.open(undefined, { rowsAtOnce: 100 });
    answered(await third.restore(memory.dump()));
    expect((await dumpOf(third)).at(-1)).toEqual((await dumpOf(one)).at(-1));
    expect(await third.verify()).toEqual(await one.verify());
    for (const store of [one, other, third]) await store.close();
  });
});
