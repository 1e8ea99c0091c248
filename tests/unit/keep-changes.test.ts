import { describe, expect, it } from "vitest";
import type { Change } from "#server/domain/change.ts";
import { keepChanges } from "#server/ports/keep-changes.ts";
import { adding, aTerm } from "#tests/support/build-change.ts";

const made = adding(aTerm("tool.saw"));

/** Changes up to a revision that can grow, and the revisions that were read. */
function aSource() {
  const reads: number[] = [];
  const source = { newest: 9, fails: false };
  const changeAt = keepChanges(async (revision): Promise<Change | undefined> => {
    reads.push(revision);
    if (source.fails) throw new Error("no answer");
    return revision <= source.newest ? made : undefined;
  });
  return { reads, source, changeAt };
}

describe("changes that are kept", () => {
  it("[S48] are read once for all who follow, at the same time and afterwards", async () => {
    const { reads, changeAt } = aSource();
    expect(await Promise.all([changeAt(3), changeAt(3)])).toEqual([made, made]);
    expect(await changeAt(3)).toBe(made);
    expect(reads).toEqual([3]);
  });

  it("are the last four", async () => {
    const { reads, changeAt } = aSource();
    for (const revision of [1, 2, 3, 4, 5, 5, 2, 1]) await changeAt(revision);
    expect(reads).toEqual([1, 2, 3, 4, 5, 1]);
  });

  it("are read again where there was none yet, or the read failed", async () => {
    const { reads, source, changeAt } = aSource();
    expect(await changeAt(10)).toBeUndefined();
    source.newest = 10;
    expect(await changeAt(10)).toBe(made);
    source.fails = true;
    await expect(changeAt(1)).rejects.toThrow("no answer");
    source.fails = false;
    expect(await changeAt(1)).toBe(made);
    expect(reads).toEqual([10, 10, 1, 1]);
  });
});
