import { readFileSync, writeFileSync } from "node:fs";
import { DatabaseSync } from "node:sqlite";
import { fileURLToPath } from "node:url";
import { gunzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { aCommit, adding, aTerm, replacing } from "#tests/support/build-change.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered, refusedWith } from "#tests/support/expect-answer.ts";
import { dumpOf } from "#tests/support/read-all.ts";
import { temporaryPath } from "#tests/support/temporary-store.ts";

const saw = aTerm("tool.saw");
const at = "2026-11-25T10:00:00.000Z";

/** Two programs on one file, as far as one process can be two. */
async function two(patience?: number): Promise<readonly [Store, Store, string]> {
  const path = temporaryPath();
  const options = patience === undefined ? {} : { patience };
  const open = async () => answered(await openSqliteStore(path, options));
  return [await open(), await open(), path];
}
const code = (answer: object): unknown => ("problem" in answer ? (answer as { code?: string }).code : "done");

describe("[S16] several writers", () => {
  it("see at once what the others wrote: lists, walks, searches and examinations", async () => {
    const [one, other] = await two();
    answered(await one.commit(aCommit(adding(saw))));
    const walk = async () => (await other.neighbourhood({ seeds: [saw.id], regions: [], maxDepth: 2 })).terms;
    expect(await walk()).toEqual([saw]);
    expect(await other.search("plane", {}, 5)).toEqual([]);
    const noted = { ...saw, note: "With a plane." };
    answered(await one.commit(aCommit(replacing(saw, noted))));
    expect(await walk()).toEqual([noted]);
    expect((await other.search("plane", {}, 5)).map(({ term }) => term)).toEqual([saw.id]);
    answered(await other.createExamination(id("examination.a"), aPiece(), at));
    answered(await one.commit(aCommit(replacing(noted, saw))));
    expect(await walk()).toEqual([saw]);
    expect((await one.listExaminations({ first: 5 })).total).toBe(1);
    expect(await one.writesAfter(0, 9)).toEqual(await other.writesAfter(0, 9));
    expect(await other.newestWrite()).toBe(4);
    await one.close();
    await other.close();
  });

  it("walk as the others have left it after many changes, a large one and a restore", async () => {
    const [one, other] = await two();
    const walk = async (store: Store) =>
      (await store.neighbourhood({ seeds: [saw.id], regions: [], maxDepth: 2 })).terms;
    const whole = openMemoryStore();
    answered(await whole.commit(aCommit(adding(saw))));
    expect(await walk(other)).toEqual([]);
    answered(await one.restore(whole.dump()));
    expect(await walk(other)).toEqual([saw]);
    let stands = saw;
    for (let n = 0; n < 130; n++) {
      const next = aTerm("tool.saw", { note: `Note ${n}.` });
      answered(await one.commit(aCommit(replacing(stands, next))));
      stands = next;
      if (n % 50 === 0) expect(await walk(other)).toEqual([next]);
    }
    expect(await walk(other)).toEqual([stands]);
    const large = aTerm("tool.saw", { note: "Long. ".repeat(50_000) });
    answered(await one.commit(aCommit(replacing(stands, large))));
    expect(await walk(other)).toEqual([large]);
    answered(await other.commit(aCommit(replacing(large, saw))));
    expect([await walk(other), await walk(one)]).toEqual([[saw], [saw]]);
    await one.close();
    await other.close();
  });

  it("let one of two changes of one thing through, whoever comes first", async () => {
    const [one, other] = await two();
    answered(await one.commit(aCommit(adding(saw))));
    answered(await one.createExamination(id("examination.a"), aPiece(), at));
    let stands = saw;
    for (let round = 1; round < 12; round++) {
      const notes = [`one ${round}`, `other ${round}`].map((note) => aTerm("tool.saw", { note }));
      const commits = [one, other].map((store, n) =>
        store.commit(aCommit(replacing(stands, notes[n] as typeof saw), { expected: round })),
      );
      const changes = [one, other].map((store) =>
        store.changeExamination(id("examination.a"), round, aPiece(), at),
      );
      const answers = await Promise.all(commits);
      expect(answers.map(code).sort()).toEqual(["CHANGED_MEANWHILE", "done"]);
      expect((await Promise.all(changes)).map(code).sort()).toEqual(["CHANGED_MEANWHILE", "done"]);
      stands = (await one.terms([saw.id])).get(saw.id) as typeof saw;
      expect(stands).toEqual(notes[answers.findIndex((answer) => code(answer) === "done")]);
    }
    expect(await other.verify()).toMatchObject({ revisions: 12 });
    await one.close();
    await other.close();
  });

  it("keep every write of many at once, in one order without a gap", async () => {
    const [one, other] = await two();
    const writes = Array.from({ length: 60 }, (_, n) => {
      const store = n % 2 === 0 ? one : other;
      return n % 3 === 0
        ? store.createExamination(id(`examination.e${n}`), aPiece(), at)
        : store.commit(aCommit(adding(aTerm(`tool.t${n}`))));
    });
    expect((await Promise.all(writes)).map(code)).toEqual(writes.map(() => "done"));
    expect((await one.writesAfter(0, 99)).map(({ sequence }) => sequence)).toEqual(
      writes.map((_, n) => n + 1),
    );
    expect(await one.verify()).toMatchObject({ revisions: 40 });
    expect(await dumpOf(one)).toEqual(await dumpOf(other));
    await one.close();
    await other.close();
  });

  it("wait for one another, and everything else goes on meanwhile", async () => {
    const [store, another, path] = await two(20_000);
    const other = new DatabaseSync(path);
    other.exec("BEGIN IMMEDIATE");
    let turns = 0;
    const turning = setInterval(() => turns++, 1);
    let hasEnded = false;
    const writing = store.commit(aCommit(adding(saw))).finally(() => {
      hasEnded = true;
    });
    await expect.poll(() => turns).toBeGreaterThan(20);
    expect(await another.newestWrite()).toBe(0);
    expect(hasEnded).toBe(false);
    clearInterval(turning);
    other.exec("ROLLBACK");
    other.close();
    answered(await writing);
    await store.close();
    await another.close();
  });

  it("write what was asked for before they close", async () => {
    const [one, other] = await two();
    const writing = one.commit(aCommit(adding(saw)));
    await one.close();
    expect((await other.terms([saw.id])).size).toBe(1);
    answered(await writing);
    await other.close();
  });

  it("keep out a program that wants to be the only one, and are kept out by it", async () => {
    const path = temporaryPath();
    const store = answered(await openSqliteStore(path));
    const alone = new DatabaseSync(`${path}-writer`, { timeout: 0 });
    expect(() => alone.exec("BEGIN EXCLUSIVE")).toThrow("locked");
    await store.close();
    alone.exec("BEGIN EXCLUSIVE");
    expect(refusedWith(await openSqliteStore(path, { patience: 50 }))).toBe("STORE_LOCKED");
    const reader = answered(await openSqliteStore(path, { readOnly: true }));
    expect(await reader.newestWrite()).toBe(0);
    await reader.close();
    alone.close();
    await answered(await openSqliteStore(path)).close();
  });

  it("[S19] bring no file to their version while one of another version writes to it", async () => {
    const path = temporaryPath();
    const kept = fileURLToPath(new URL("kept/version-1.sqlite.gz", import.meta.url));
    writeFileSync(path, gunzipSync(readFileSync(kept)));
    const raw = new DatabaseSync(path);
    const served = new DatabaseSync(`${path}-writer`);
    served.exec("BEGIN; SELECT count(*) FROM sqlite_schema");
    expect(refusedWith(await openSqliteStore(path, { patience: 50 }))).toBe("STORE_LOCKED");
    expect(raw.prepare("PRAGMA user_version").get()).toEqual({ user_version: 1 });
    raw.close();
    const waiting = Promise.all([openSqliteStore(path), openSqliteStore(path), openSqliteStore(path)]);
    await new Promise((resolve) => setTimeout(resolve, 30));
    served.close();
    const stores = (await waiting).map(answered);
    for (const store of stores)
      answered(await store.commit(aCommit(adding(aTerm(`tool.t${stores.indexOf(store)}`)))));
    expect(await stores[0]?.newestWrite()).toBe(4);
    expect(await stores[1]?.verify()).toMatchObject({ revisions: 6 });
    for (const store of stores) await store.close();
  });

  it("let readers in beside them, who see what they write", async () => {
    const path = temporaryPath();
    const writer = answered(await openSqliteStore(path));
    answered(await writer.commit(aCommit(adding(saw))));
    const reader = answered(await openSqliteStore(path, { readOnly: true }));
    const walk = async () =>
      (await reader.neighbourhood({ seeds: [saw.id], regions: [], maxDepth: 2 })).terms;
    expect(await walk()).toEqual([saw]);
    expect(await reader.search("plane", {}, 5)).toEqual([]);

    const renamed = { ...saw, note: "With a plane." };
    answered(await writer.commit(aCommit(replacing(saw, renamed))));
    expect(await walk()).toEqual([renamed]);
    expect((await reader.search("plane", {}, 5)).map(({ term }) => term)).toEqual([saw.id]);
    expect(await reader.newestRevision()).toEqual(await writer.newestRevision());
    expect(await reader.verify()).toEqual(await writer.verify());
    await reader.close();
    await writer.close();
  });

  it("refuse writes of a reader, and write nothing", async () => {
    const path = temporaryPath();
    const writer = answered(await openSqliteStore(path));
    answered(await writer.commit(aCommit(adding(saw))));
    const before = await dumpOf(writer);
    const reader = answered(await openSqliteStore(path, { readOnly: true }));
    expect(refusedWith(await reader.commit(aCommit(adding(aTerm("tool.plane")))))).toBe("STORE_LOCKED");
    expect(refusedWith(await reader.createExamination(id("examination.a"), aPiece(), at))).toBe(
      "STORE_LOCKED",
    );
    expect(await dumpOf(writer)).toEqual(before);
    await reader.close();
    await writer.close();
  });

  it("refuse to write while another program holds the file for long, and go on afterwards", async () => {
    const path = temporaryPath();
    const store = answered(await openSqliteStore(path, { patience: 50 }));
    answered(await store.commit(aCommit(adding(saw))));
    const before = await dumpOf(store);
    const other = new DatabaseSync(path);
    other.exec("BEGIN IMMEDIATE");
    expect(refusedWith(await store.commit(aCommit(adding(aTerm("tool.plane")))))).toBe("STORE_LOCKED");
    expect(refusedWith(await store.createExamination(id("examination.a"), aPiece(), at))).toBe(
      "STORE_LOCKED",
    );
    expect((await store.terms([saw.id])).size).toBe(1);
    expect(await dumpOf(store)).toEqual(before);
    other.exec("ROLLBACK");
    other.close();
    answered(await store.commit(aCommit(adding(aTerm("tool.plane")), { expected: 1 })));
    expect(await store.verify()).toMatchObject({ revisions: 2 });
    await store.close();
  });

  it("[T5] refuse all that wait when the patience of each has ended, not one after the other", async () => {
    const path = temporaryPath();
    const store = answered(await openSqliteStore(path, { patience: 1_000 }));
    const other = new DatabaseSync(path);
    other.exec("BEGIN IMMEDIATE");
    const begun = performance.now();
    const answers = await Promise.all(
      Array.from({ length: 30 }, (_, n) => store.commit(aCommit(adding(aTerm(`tool.t${n}`))))),
    );
    expect(new Set(answers.map(refusedWith))).toEqual(new Set(["STORE_LOCKED"]));
    // One after the other takes thirty seconds.
    expect(performance.now() - begun).toBeLessThan(15_000);
    other.exec("ROLLBACK");
    other.close();
    await store.close();
  });

  it.each(["a new store", "one that is there", "one that is there, to read"])(
    "[T11] wait with opening %s for another program that holds its file for a moment",
    async (which) => {
      const path = temporaryPath();
      if (which !== "a new store") await answered(await openSqliteStore(path)).close();
      const other = new DatabaseSync(path);
      // No log: nobody can read meanwhile, as when the last program closes the file or the first one mends its log.
      other.exec("PRAGMA journal_mode = delete; BEGIN EXCLUSIVE");
      const opening = openSqliteStore(path, { patience: 5_000, readOnly: which.endsWith("read") });
      await new Promise((resolve) => setTimeout(resolve, 200));
      other.exec("ROLLBACK");
      other.close();
      await answered(await opening).close();
    },
  );

  it("refuse to open a new store while another program holds its file", async () => {
    const path = temporaryPath();
    const other = new DatabaseSync(path);
    other.exec("BEGIN EXCLUSIVE");
    expect(refusedWith(await openSqliteStore(path, { patience: 50 }))).toBe("STORE_LOCKED");
    other.exec("ROLLBACK");
    other.close();
    await answered(await openSqliteStore(path)).close();
  });
});
