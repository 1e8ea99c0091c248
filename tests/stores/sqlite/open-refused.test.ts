import { mkdirSync, readFileSync, statSync, truncateSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { describe, expect, it } from "vitest";
import { isOlder, openFile } from "#server/stores/sqlite/open-file.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { aCommit } from "#tests/support/build-change.ts";
import { answered, refusedWith } from "#tests/support/expect-answer.ts";
import { largeGraph } from "#tests/support/large-graph.ts";
import { temporaryPath } from "#tests/support/temporary-store.ts";

async function filledFile(): Promise<string> {
  const path = temporaryPath();
  const store = answered(await openSqliteStore(path));
  answered(await store.commit(aCommit(largeGraph(300).change)));
  await store.close();
  return path;
}

/** Writes these bytes over a place in a file. */
function overwrite(path: string, from: number, bytes: Uint8Array): void {
  const content = readFileSync(path);
  content.set(bytes, from);
  writeFileSync(path, content);
}

describe("[S15] a file that is no sound store is refused and left as it is:", () => {
  const damages: readonly (readonly [string, string, (path: string) => void])[] = [
    ["a text", "STORE_CORRUPT", (path) => writeFileSync(path, "Not a database. ".repeat(100))],
    ["a damaged header", "STORE_CORRUPT", (path) => overwrite(path, 0, new Uint8Array(50).fill(7))],
    ["damaged pages", "STORE_CORRUPT", (path) => overwrite(path, 8192, new Uint8Array(40_000).fill(255))],
    ["a cut file", "STORE_CORRUPT", (path) => truncateSync(path, Math.floor(statSync(path).size / 2))],
    ["a later version", "OTHER_VERSION", (path) => change(path, "PRAGMA user_version = 999")],
    ["a database of another program", "WRONG_FORMAT", (path) => change(path, "PRAGMA application_id = 7")],
  ];
  const change = (path: string, sql: string): void => {
    const raw = new DatabaseSync(path);
    raw.exec(`${sql}; PRAGMA journal_mode = delete`);
    raw.close();
  };

  it.each(damages)("%s", async (_, code, damage) => {
    const path = await filledFile();
    damage(path);
    const before = readFileSync(path);
    expect(refusedWith(await openSqliteStore(path))).toBe(code);
    expect(refusedWith(await openSqliteStore(path, { readOnly: true }))).toBe(code);
    expect(readFileSync(path).equals(before)).toBe(true);
  });

  it("a folder", async () => {
    const path = temporaryPath();
    mkdirSync(path);
    expect(refusedWith(await openSqliteStore(path))).toBe("STORE_UNREACHABLE");
  });

  it("a place below a file", async () => {
    const path = temporaryPath();
    writeFileSync(path, "");
    expect(refusedWith(await openSqliteStore(join(path, "deeper", "scribeline.sqlite")))).toBe(
      "STORE_UNREACHABLE",
    );
  });
});

describe("[S15] opening", () => {
  it("makes the folder and the file", async () => {
    const path = join(dirname(temporaryPath()), "a", "b", "scribeline.sqlite");
    const store = answered(await openSqliteStore(path));
    expect(await store.newestRevision()).toBeUndefined();
    await store.close();
    expect(statSync(path).size).toBeGreaterThan(0);
  });

  it("takes an empty file for a new store", async () => {
    const path = temporaryPath();
    writeFileSync(path, "");
    const store = answered(await openSqliteStore(path));
    expect(await store.verify()).toMatchObject({ revisions: 0 });
    await store.close();
  });

  it("to read only makes nothing", async () => {
    const path = temporaryPath();
    expect(refusedWith(await openSqliteStore(path, { readOnly: true }))).toBe("STORE_UNREACHABLE");
    writeFileSync(path, "");
    expect(refusedWith(await openSqliteStore(path, { readOnly: true }))).toBe("OTHER_VERSION");
    expect(statSync(path).size).toBe(0);
  });

  it("writes through to the disk before a write is acknowledged", async () => {
    const path = await filledFile();
    const database = answered(await openFile(path, { readOnly: false, patience: 0 }));
    expect(database.get("PRAGMA journal_mode")).toEqual({ journal_mode: "wal" });
    expect(database.get("PRAGMA synchronous"), "2 is full").toEqual({ synchronous: 2 });
    await database.close();
  });

  it("is refused with an SQLite that can damage a store", () => {
    const needed = [3, 51, 3];
    const older = [[3, 51, 2], [3, 50, 9], [2, 99, 99], [3, 51], []];
    expect(older.map((version) => isOlder(version, needed))).toEqual(older.map(() => true));
    const enough = [
      [3, 51, 3],
      [3, 51, 4],
      [3, 53, 0],
      [4, 0, 0],
      [3, 51, 3, 1],
    ];
    expect(enough.map((version) => isOlder(version, needed))).toEqual(enough.map(() => false));
  });
});
