import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { zstdCompressSync, zstdDecompressSync } from "node:zlib";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { changeText } from "#server/chain/change-text.ts";
import { linkRevision } from "#server/chain/link-revision.ts";
import { dumpLine, sealDump } from "#server/chain/seal-dump.ts";
import { id } from "#server/domain/ids.ts";
import { restoreDump } from "#server/dump/restore-dump.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aCommit, adding, aSource, aTerm } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered, refusedWith } from "#tests/support/expect-answer.ts";
import { dumpOf } from "#tests/support/read-all.ts";

const folder = mkdtempSync(join(tmpdir(), "scribeline-dump-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Restores these bytes, as a file, into an empty store; a refusal must leave it empty. */
async function restored(content: string | Uint8Array): Promise<unknown> {
  const file = join(folder, "dump.jsonl");
  writeFileSync(file, content);
  const store = openMemoryStore();
  const done = await restoreDump(store, file);
  if ("problem" in done) expect(await dumpOf(store)).toHaveLength(2);
  else expect((await dumpOf(store)).map(dumpLine).join("")).toBe(content.toString());
  return done;
}

function zstdSays(bytes: Uint8Array): string | undefined {
  try {
    return zstdDecompressSync(bytes).toString();
  } catch {
    return undefined;
  }
}

let dump = "";
beforeAll(async () => {
  const store = openMemoryStore();
  const claim = aClaim({
    ...{ id: "claim.1", relation: "requires", subject: "feature.mark", ways: [["tool.saw"]] },
    citations: [{ basis: "published", source: id("source.book"), locator: "p. 1" }],
  });
  const things = [aTerm("tool.saw"), aTerm("feature.mark"), aSource("source.book", "Über “Sägen”"), claim];
  answered(await store.commit(aCommit(adding(...things))));
  const piece = aPiece({ observations: [{ id: "o1", part: "p1", feature: "feature.mark" }] });
  answered(await store.createExamination(id("examination.a"), piece, "2026-11-25T10:00:00.000Z"));
  dump = (await dumpOf(store)).map(dumpLine).join("");
});

describe("a dump file", () => {
  it("[S9] that is compressed is restored as what it was, and refused wherever it breaks off or was changed", async () => {
    const packed = zstdCompressSync(dump);
    const store = openMemoryStore();
    const file = join(folder, "dump.jsonl.zst");
    writeFileSync(file, packed);
    expect(await restoreDump(store, file)).toEqual({ records: 6 });
    expect((await dumpOf(store)).map(dumpLine).join("")).toBe(dump);
    const isRefused = async (bytes: Uint8Array): Promise<void> => {
      writeFileSync(file, bytes);
      const empty = openMemoryStore();
      const refused = await restoreDump(empty, file);
      expect(refusedWith(refused)).toMatch(/DAMAGED_DUMP|WRONG_FORMAT|OTHER_VERSION/);
      expect(await dumpOf(empty)).toHaveLength(2);
    };
    for (let length = 0; length < packed.length; length += 11) await isRefused(packed.subarray(0, length));
    for (let at = 0; at < packed.length; at += 13) {
      const changed = Buffer.from(packed);
      changed[at] = (changed[at] ?? 0) ^ 0x10;
      // A byte that packing does not need, as of a length that is told twice, may be changed in vain.
      if (zstdSays(changed) !== dump) await isRefused(changed);
    }
  });

  it("[S8] is restored as it was written", async () => {
    expect(await restored(dump)).toEqual({ records: 6 });
  });

  it("[S9] is refused wherever it breaks off", async () => {
    const bytes = Buffer.from(dump);
    for (let length = 0; length < bytes.length; length += 7)
      expect(refusedWith(await restored(bytes.subarray(0, length)))).toMatch(/DAMAGED_DUMP|WRONG_FORMAT/);
    expect(await restored(dump.slice(0, -1))).toMatchObject({ code: "DAMAGED_DUMP", path: [6] });
    expect(await restored(dump.slice(0, dump.lastIndexOf("{")))).toMatchObject({
      code: "DAMAGED_DUMP",
      path: [5],
    });
  });

  it("[S9] is refused whichever byte of it was changed", async () => {
    const bytes = Buffer.from(dump);
    await fc.assert(
      fc.asyncProperty(fc.nat(bytes.length - 1), fc.integer({ min: 1, max: 255 }), async (place, by) => {
        const changed = Buffer.from(bytes);
        changed[place] = (changed[place] as number) ^ by;
        expect(refusedWith(await restored(changed))).toMatch(/DAMAGED_DUMP|WRONG_FORMAT|OTHER_VERSION/);
      }),
      { numRuns: 300 },
    );
  });

  it.each([
    ["empty", "DAMAGED_DUMP", () => ""],
    ["a blank line", "WRONG_FORMAT", () => "\n"],
    ["not a dump", "WRONG_FORMAT", () => '{"format":"scribeline/piece","version":1}\n'],
    ["something else", "WRONG_FORMAT", () => "Dear colleague,\n"],
    ["of another version", "OTHER_VERSION", () => dump.replace('"version":2}', '"version":99}')],
    ["with npm's banner before it", "WRONG_FORMAT", () => `\n> scribeline@0.1.0 dump\n${dump}`],
    ["with a byte order mark", "WRONG_FORMAT", () => `\uFEFF${dump}`],
    ["with Windows line ends", "DAMAGED_DUMP", () => dump.replaceAll("\n", "\r\n")],
    ["with a blank line at the end", "DAMAGED_DUMP", () => `${dump}\n`],
    ["with more after the trailer", "DAMAGED_DUMP", () => `${dump}{}\n`],
    [
      "with blanks between",
      "DAMAGED_DUMP",
      () => dump.replace('{"kind"', '{ "kind"').replace('"change":[', '"change": ['),
    ],
    ["with a line that is no JSON", "DAMAGED_DUMP", () => dump.replace('"change":[', '"change":')],
    [
      "with an unknown kind of line",
      "DAMAGED_DUMP",
      () => dump.replace('"kind":"examination"', '"kind":"toString"'),
    ],
  ])("[S9] is refused if it is %s", async (_, code, content) => {
    expect(refusedWith(await restored(content()))).toBe(code);
  });

  it("[S9] is refused if it is not UTF-8", async () => {
    const bytes = Buffer.from(dump.replace("Ü", "\u0000"));
    bytes[bytes.indexOf(0)] = 0xdc;
    expect(refusedWith(await restored(bytes))).toBe("DAMAGED_DUMP");
  });

  it("[S9] says which line is damaged, where and how", async () => {
    const answer = await restored(dump.replace('"basis":"published"', '"basis":"rumour"'));
    expect(answer).toMatchObject({ code: "DAMAGED_DUMP" });
    expect((answer as { path: unknown[] }).path.slice(0, 2)).toEqual([2, "change"]);
    expect((answer as { message: string }).message).toMatch(/^Line 2 of the dump .*Nothing was restored/);
  });

  it("[S9] is refused if a claim in it cites nothing, though all hashes are right", async () => {
    const change = adding(aTerm("tool.saw"), {
      ...aClaim({ id: "claim.1", relation: "introduced", subject: "tool.saw", when: "1790" }),
      citations: [] as never,
    });
    const revision = linkRevision(changeText(change), aCommit(change), undefined);
    const lines = [...sealDump([{ kind: "revision", revision, change }])].map(dumpLine);
    const answer = await restored(lines.join(""));
    expect(answer).toMatchObject({ code: "DAMAGED_DUMP" });
    expect((answer as { message: string }).message).toContain("citations");
  });

  it("[S9] that cannot be read is named", async () => {
    const store = openMemoryStore();
    for (const path of [join(folder, "none.jsonl"), folder]) {
      const refusal = await restoreDump(store, path);
      expect(refusedWith(refusal)).toBe("UNREADABLE_FILE");
      expect((refusal as { message: string }).message).toContain(path);
    }
  });
});
