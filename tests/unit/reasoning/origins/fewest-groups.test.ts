import { describe, expect, it } from "vitest";
import { randomSource } from "#server/generator/random-source.ts";
import { fewestGroups } from "#server/reasoning/origins/fewest-groups.ts";
import { forcedPairs } from "#server/reasoning/origins/forced-pairs.ts";
import { largestCliques } from "#server/reasoning/origins/largest-cliques.ts";
import { noBits, type OriginPuzzle, originPuzzle, setBit } from "#server/reasoning/origins/origin-puzzle.ts";

const ENOUGH = 1_000_000;

/** Thirty origins with a third of forty cells each, and a fifth of the pairs recorded as separate. */
function anyPuzzle(seed: number): OriginPuzzle {
  const random = randomSource(seed);
  const origins = Array.from({ length: 30 }, (_, n) => {
    const cells = noBits(40);
    setBit(cells, n);
    for (let cell = 0; cell < 40; cell++) if (random.chance(0.33)) setBit(cells, cell);
    return { parts: [], cells };
  });
  const pairs = origins.flatMap((_, a) => origins.slice(a + 1).map((_, b) => [a, a + 1 + b] as const));
  return originPuzzle(
    origins,
    pairs.filter(() => random.chance(0.2)),
  );
}

describe("a search for origins that runs out of steps", () => {
  it("[O7] claims no more than it has proved", () => {
    let cut = 0;
    for (let seed = 0; seed < 12; seed++) {
      const puzzle = anyPuzzle(seed);
      const { cliques } = largestCliques(puzzle, 10, { left: ENOUGH });
      const clique = cliques[0] ?? [];
      const full = fewestGroups(puzzle, clique, { left: ENOUGH });
      const all = forcedPairs(puzzle, full, clique, { left: ENOUGH });
      expect([full.isProved, all.isThrough]).toEqual([true, true]);
      for (const left of [0, 10, 40, 160]) {
        const found = fewestGroups(puzzle, clique, { left });
        expect(found.atLeast).toBeLessThanOrEqual(full.atLeast);
        expect(new Set(found.grouping).size).toBeGreaterThanOrEqual(full.atLeast);
        if (found.isProved) expect(found.atLeast).toBe(full.atLeast);
        else cut++;
        const some = forcedPairs(puzzle, full, clique, { left });
        for (const pair of some.together) expect(all.together).toContainEqual(pair);
        for (const pair of some.apart) expect(all.apart).toContainEqual(pair);
      }
    }
    expect(cut).toBeGreaterThan(5);
  });

  it("[O4] tells the largest sets it found, and that there may be larger ones", () => {
    const puzzle = anyPuzzle(3);
    const all = largestCliques(puzzle, 10, { left: ENOUGH });
    expect(all.isProved).toBe(true);
    expect(all.cliques.map((clique) => clique.join(" "))).toEqual(
      [...all.cliques].sort(inOrder).map((clique) => clique.join(" ")),
    );
    const some = largestCliques(puzzle, 10, { left: 2 });
    expect(some.isProved).toBe(false);
    expect(some.cliques[0]?.length).toBeLessThanOrEqual(all.cliques[0]?.length ?? 0);
  });
});

function inOrder(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((one, i) => one !== b[i]);
  return at === -1 ? 0 : (a[at] ?? 0) - (b[at] ?? 0);
}
