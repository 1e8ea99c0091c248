import { DatabaseSync } from "node:sqlite";
import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { aCommit, adding, aTerm, replacing } from "#tests/support/build-change.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered, refusedWith } from "#tests/support/expect-answer.ts";
import { dumpOf } from "#tests/support/read-all.ts";
import { temporaryPath } from "#tests/support/temporary-store.ts";

const saw = aTerm("tool.saw");
const at = "2026-11-25T10:00:00.000Z";

describe("[S16] one writer at a time", () => {
  it("refuses a second, and lets it in when the first has closed", async () => {
    const path = temporaryPath();
    const first = answered(await openSqliteStore(path));
    expect(refusedWith(await openSqliteStore(path))).toBe("STORE_LOCKED");
    answered(await first.commit(aCommit(adding(saw))));
    await first.close();
    const second = answered(await openSqliteStore(path));
    expect((await second.newestRevision())?.number).toBe(1);
    await second.close();
  });

  it("lets readers in beside it, who see what it writes", async () => {
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

  it("refuses writes of a reader, and writes nothing", async () => {
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

  it("refuses to write while another program holds the file, and goes on afterwards", async () => {
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

  it("refuses to open a new store while another program holds its file", async () => {
    const path = temporaryPath();
    const other = new DatabaseSync(path);
    other.exec("BEGIN EXCLUSIVE");
    expect(refusedWith(await openSqliteStore(path, { patience: 50 }))).toBe("STORE_LOCKED");
    other.exec("ROLLBACK");
    other.close();
    await answered(await openSqliteStore(path)).close();
  });
});
