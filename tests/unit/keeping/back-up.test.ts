import { createWriteStream, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Transform, Writable } from "node:stream";
import { zstdDecompressSync } from "node:zlib";
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { dumpLine } from "#server/chain/seal-dump.ts";
import { problem } from "#server/domain/problem.ts";
import { type BackUpOptions, backUp } from "#server/keeping/back-up.ts";
import { keepBackupState, readBackupState } from "#server/keeping/backup-state.ts";
import { openToWrite } from "#server/keeping/pack-dump.ts";
import type { Store } from "#server/ports/store.ts";
import { StoreFailed } from "#server/ports/store-failed.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { answered, refusedWith } from "#tests/support/expect-answer.ts";
import { dumpOf } from "#tests/support/read-all.ts";

const root = mkdtempSync(join(tmpdir(), "scribeline-backups-"));
afterAll(() => rmSync(root, { recursive: true, force: true }));

let folder = "";
let store: Store = openMemoryStore();
let time = 0;
beforeEach(async () => {
  folder = mkdtempSync(join(root, "folder-"));
  store = openMemoryStore();
  time = Date.UTC(2026, 10, 25, 10);
  await grow();
});

const grow = async (): Promise<void> => {
  const number = (await store.newestRevision())?.number ?? 0;
  answered(await store.commit(aCommit(adding(aTerm(`tool.saw-${number}`)))));
};
const bytesOf = async (of: Store): Promise<string> => (await dumpOf(of)).map(dumpLine).join("");
const run = (options: Partial<BackUpOptions> = {}) =>
  backUp({
    openStore: async () => ({ ...store, close: async () => {} }),
    folder,
    keep: 2,
    openScratch: async () => openMemoryStore(),
    now: () => {
      time += 60_000;
      return new Date(time);
    },
    tell: () => {},
    ...options,
  });
/** The files of the folder but for the one that tells how the backups stand. */
const files = (): readonly string[] =>
  readdirSync(folder)
    .filter((name) => name !== "backups.json")
    .sort();

/** A file that is written but for one byte. */
const flipping = (path: string): Writable => {
  const flip = new Transform({
    transform: (bytes: Buffer, _, done) => {
      const changed = Buffer.from(bytes);
      const at = Math.floor(changed.length / 2);
      changed[at] = (changed[at] ?? 0) ^ 0x40;
      done(null, changed);
    },
  });
  flip.pipe(createWriteStream(path));
  return flip;
};
/** A disk that takes so many bytes. */
const full =
  (room: number) =>
  (path: string): Writable => {
    const file = openToWrite(path);
    let taken = 0;
    return new Writable({
      write: (bytes: Buffer, _, done) => {
        taken += bytes.length;
        if (taken > room)
          done(Object.assign(new Error("ENOSPC: no space left on device, write"), { code: "ENOSPC" }));
        else file.write(bytes, done);
      },
      destroy: (failure, done) => {
        file.destroy();
        done(failure);
      },
    });
  };

describe("[S56] a backup", () => {
  it("is a whole dump of one moment, compressed, and tells what it is", async () => {
    const made = answered(await run());
    expect(files()).toEqual(["backup-000001-20261125T100100Z.jsonl.zst"]);
    const bytes = readFileSync(join(folder, made.backup.file));
    expect(zstdDecompressSync(bytes).toString()).toBe(await bytesOf(store));
    const trailer = (await dumpOf(store)).at(-1) as { readonly sha256: string };
    expect(made).toEqual({
      removed: [],
      backup: {
        file: "backup-000001-20261125T100100Z.jsonl.zst",
        at: "2026-11-25T10:01:00.000Z",
        sha256: trailer.sha256,
        bytes: bytes.length,
        revisions: 1,
        examinations: 0,
        seconds: 60,
      },
    });
    expect(await readBackupState(folder)).toEqual({
      ...{ format: "scribeline/backups", version: 1 },
      ...{ lastTry: { at: "2026-11-25T10:01:00.000Z" }, lastGood: made.backup },
    });
  });

  it("clears what one that was broken off has left", async () => {
    writeFileSync(join(folder, "backup-000007-20261125T100000Z.jsonl.zst.part"), "half");
    mkdtempSync(join(folder, "rehearsal-"));
    writeFileSync(join(folder, "letter.txt"), "kept");
    answered(await run());
    expect(files()).toEqual(["backup-000001-20261125T100100Z.jsonl.zst", "letter.txt"]);
  });
});

describe("[S57] the rehearsal of the restore", () => {
  const refusals: readonly (readonly [string, string, Partial<BackUpOptions>])[] = [
    ["a byte of the file is another", "DAMAGED_DUMP", { openToWrite: flipping }],
    [
      "the restored store gives another hash",
      "DAMAGED_DUMP",
      { openScratch: async () => ({ ...openMemoryStore(), dump: () => openMemoryStore().dump() }) },
    ],
    [
      "the restored store does not check",
      "STORE_CORRUPT",
      {
        openScratch: async () => ({
          ...openMemoryStore(),
          verify: async () => problem("STORE_CORRUPT", "It does not check."),
        }),
      },
    ],
    [
      "there is no room for the restored store",
      "STORE_FULL",
      { openScratch: async () => problem("STORE_FULL", "The disk is full.") },
    ],
  ];

  it.each(refusals)("refuses the backup where %s", async (_, code, options) => {
    expect(refusedWith(await run(options))).toBe(code);
    expect(files()).toEqual([]);
    expect(await readBackupState(folder)).toMatchObject({ lastTry: { code } });
  });

  it("restores the file into a store of its own, which is closed and taken away", async () => {
    const closed: string[] = [];
    const openScratch = async (scratch: string): Promise<Store> => {
      const memory = openMemoryStore();
      writeFileSync(join(scratch, "store"), "rows");
      return {
        ...memory,
        close: async () => {
          closed.push(await bytesOf(memory));
        },
      };
    };
    answered(await run({ openScratch }));
    expect(closed).toEqual([await bytesOf(store)]);
    expect(files()).toHaveLength(1);
  });
});

describe("[S58] older backups", () => {
  const numbers = (): readonly number[] => files().map((name) => Number(name.slice(7, 13)));

  it("go only when a newer good one is there, the oldest first", async () => {
    const removed: (readonly string[])[] = [];
    for (let n = 0; n < 4; n++) {
      await grow();
      removed.push(answered(await run()).removed);
    }
    expect(numbers()).toEqual([3, 4]);
    expect(removed.map((names) => names.map((name) => Number(name.slice(7, 13))))).toEqual([
      [],
      [],
      [1],
      [2],
    ]);
  });

  it("go by their number, whatever the clock says", async () => {
    for (let n = 0; n < 3; n++) {
      answered(await run());
      time -= 86_400_000;
    }
    expect(numbers()).toEqual([2, 3]);
  });

  const failures: readonly (readonly [string, string, () => Partial<BackUpOptions>])[] = [
    ["the disk is full at once", "STORE_FULL", () => ({ openToWrite: full(0) })],
    ["the disk is full before the end", "STORE_FULL", () => ({ openToWrite: full(200) })],
    [
      "the store fails while it is read",
      "STORE_UNREACHABLE",
      () => ({
        openStore: async () => ({
          ...store,
          close: async () => {},
          dump: async function* () {
            for await (const record of store.dump()) {
              if (record.kind === "trailer")
                throw new StoreFailed(problem("STORE_UNREACHABLE", "The server is gone."), undefined);
              yield record;
            }
          },
        }),
      }),
    ],
    [
      "the store cannot be opened",
      "STORE_UNREACHABLE",
      () => ({ openStore: async () => problem("STORE_UNREACHABLE", "There is no server.") }),
    ],
    ["the rehearsal fails", "DAMAGED_DUMP", () => ({ openToWrite: flipping })],
  ];
  it.each(failures)("stay, to the byte, where %s", async (_, code, options) => {
    for (let n = 0; n < 2; n++) answered(await run());
    const before = files().map((name) => readFileSync(join(folder, name)));
    const good = (await readBackupState(folder))?.lastGood;
    expect(refusedWith(await run({ keep: 1, ...options() }))).toBe(code);
    expect(files().map((name) => readFileSync(join(folder, name)))).toEqual(before);
    expect(await readBackupState(folder)).toMatchObject({ lastTry: { code }, lastGood: good });
    answered(await run({ keep: 1 }));
    expect(numbers()).toEqual([3]);
  });

  it("stay where a defect ends the backup", async () => {
    answered(await run());
    const defect = async (): Promise<never> => {
      throw new TypeError("a defect");
    };
    await expect(run({ keep: 1, openScratch: defect })).rejects.toThrow("a defect");
    expect(numbers()).toEqual([1]);
  });
});

describe("how the backups of a folder stand", () => {
  it("is nothing that is known where the file cannot be made out", async () => {
    expect(await readBackupState(folder)).toBeUndefined();
    await keepBackupState(folder, { lastTry: { at: "2026-11-25T10:00:00.000Z" } });
    expect(await readBackupState(folder)).toMatchObject({ lastTry: { at: "2026-11-25T10:00:00.000Z" } });
    for (const text of [
      "",
      "null",
      "{",
      '{"format":"other"}',
      '{"format":"scribeline/backups","version":1}',
    ]) {
      writeFileSync(join(folder, "backups.json"), text);
      expect(await readBackupState(folder)).toBeUndefined();
    }
  });
});
