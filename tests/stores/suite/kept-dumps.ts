import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { dumpLine } from "#server/chain/seal-dump.ts";
import { DUMP_VERSION, type DumpRecord } from "#server/domain/dump.ts";
import { restoreDump } from "#server/dump/restore-dump.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { dumpOf } from "#tests/support/read-all.ts";

/** A dump of each version that was ever written, by the program of its time, all with the same graph and examinations. */
const KEPT = fileURLToPath(new URL("../kept-dumps/", import.meta.url));
const versions = Array.from({ length: DUMP_VERSION }, (_, before) => before + 1);
const HEAD = "c7c61c860490b868793f641d720bb57e435aae09fca028b279357e28819a136c";

/** What every version holds: the lines of revisions and of versions of examinations. */
const hashOf = (records: readonly DumpRecord[]): string =>
  createHash("sha256")
    .update(
      records
        .filter(({ kind }) => kind === "revision" || kind === "examination")
        .map(dumpLine)
        .join(""),
    )
    .digest("hex");
const bytesOf = (records: readonly DumpRecord[]): string => records.map(dumpLine).join("");

/** Rule S19 for dumps, to be run on adapters. */
export function keptDumps(name: string, open: () => Promise<Store>): void {
  it("[S19] a dump of each version is kept, so that none is forgotten", () => {
    expect(readdirSync(KEPT).sort()).toEqual(versions.map((version) => `version-${version}.jsonl`));
  });

  it.each(versions)(
    `[S19] a dump of version %i is taken by a store (${name}) with its hashes as they were, and given again as it is written now`,
    async (version) => {
      const file = `${KEPT}version-${version}.jsonl`;
      const store = await open();
      answered(await restoreDump(store, file));
      expect(await store.verify()).toEqual({ revisions: 3, head: HEAD });
      const dump = await dumpOf(store);
      expect(hashOf(dump)).toBe("241e19ab0f0b7f25755e53831b3ba6427e28b0642ea77f8b375abf3cddca32ba");
      expect(dump[0]).toMatchObject({ version: DUMP_VERSION });
      if (version === DUMP_VERSION) expect(bytesOf(dump)).toBe(readFileSync(file, "utf8"));
      const again = openMemoryStore();
      answered(await again.restore(dump));
      expect(bytesOf(await dumpOf(again))).toBe(bytesOf(dump));
      await store.close();
    },
  );
}
