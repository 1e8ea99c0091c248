import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { gunzipSync } from "node:zlib";
import { expect, it } from "vitest";
import { dumpLine } from "#server/chain/seal-dump.ts";
import type { DumpRecord } from "#server/domain/dump.ts";
import { id } from "#server/domain/ids.ts";
import { MIGRATIONS } from "#server/stores/sqlite/migrations.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { plainWrites } from "#tests/support/plain-writes.ts";
import { dumpOf } from "#tests/support/read-all.ts";
import { temporaryPath } from "#tests/support/temporary-store.ts";

/** A store of each version that was ever written, all with the same content, as they lay on the disk then. */
const KEPT = fileURLToPath(new URL("kept", import.meta.url));
const versions = MIGRATIONS.map((_, version) => version + 1);

const hashOf = (records: readonly DumpRecord[]): string =>
  createHash("sha256").update(records.map(dumpLine).join("")).digest("hex");

it("[S19] a file of each version is kept, so that none is forgotten", () => {
  expect(readdirSync(KEPT).sort()).toEqual(versions.map((version) => `version-${version}.sqlite.gz`));
});

it.each(versions)(
  "[S19] [S47] a file of version %i opens with its whole content, and takes more",
  async (version) => {
    const path = temporaryPath();
    writeFileSync(path, gunzipSync(readFileSync(join(KEPT, `version-${version}.sqlite.gz`))));
    const store = answered(await openSqliteStore(path));
    expect(await store.verify()).toEqual({
      revisions: 3,
      head: "c7c61c860490b868793f641d720bb57e435aae09fca028b279357e28819a136c",
    });
    const dumped = await dumpOf(store);
    expect(dumped.at(-1)).toMatchObject({ kind: "trailer", revisions: 3, examinations: 2 });
    expect(hashOf(dumped.filter(({ kind }) => kind === "revision" || kind === "examination"))).toBe(
      "241e19ab0f0b7f25755e53831b3ba6427e28b0642ea77f8b375abf3cddca32ba",
    );
    // What came before the list of writes counts as one restore.
    const before = version === 1 ? 1 : 5;
    expect(await store.newestWrite()).toBe(before);
    if (version === 1)
      expect(plainWrites(await store.writesAfter(0, 9))).toEqual([
        { sequence: 1, revision: 3, restored: true },
      ]);
    const walked = await store.neighbourhood({ seeds: [id("feature.mark")], regions: [], maxDepth: 3 });
    expect(walked.claims.map((claim) => claim.id)).toEqual(["claim.1", "claim.2", "claim.3"]);
    answered(await store.commit(aCommit(adding(aTerm("tool.plane")), { expected: 3 })));
    answered(await store.undoExamination(id("examination.a"), 2, "2026-11-25T11:00:00.000Z"));
    expect(plainWrites(await store.writesAfter(before, 9))).toEqual([
      { sequence: before + 1, revision: 4 },
      { sequence: before + 2, examination: { id: "examination.a", version: 3 } },
    ]);
    expect(await store.verify()).toMatchObject({ revisions: 4 });
    await store.close();
  },
);
