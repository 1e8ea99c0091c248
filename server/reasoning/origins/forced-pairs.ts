import { type FewestGroups, type Grouping, groupWithin, type Steps } from "./fewest-groups.ts";
import { type Bits, hasBit, keptApart, type OriginPuzzle } from "./origin-puzzle.ts";

type Pair = readonly [number, number];

/** Pairs of origins that are one, or two, in every grouping into as few as there can be. */
export interface ForcedPairs {
  readonly together: readonly Pair[];
  readonly apart: readonly Pair[];
  /** All pairs were decided. */
  readonly isThrough: boolean;
}

/**
 * Solves again with each pair kept apart, and made one; a pair that some grouping found so far settles is not asked of. `clique`: origins
 * no two of which can be one.
 */
export function forcedPairs(
  puzzle: OriginPuzzle,
  { atLeast, grouping }: FewestGroups,
  clique: readonly number[],
  steps: Steps,
): ForcedPairs {
  const size = puzzle.origins.length;
  const isApart = (a: number, b: number): boolean => hasBit(puzzle.apart[a] as Bits, b);
  const singles = clique.map((one) => [one]);
  const seen: Grouping[] = [grouping];
  const isSeenAs = (isOne: boolean, [a, b]: Pair): boolean =>
    seen.some((one) => (one[a] === one[b]) === isOne);
  const together: Pair[] = [];
  const apart: Pair[] = [];
  let isThrough = true;
  for (let a = 0; a < size; a++)
    for (let b = a + 1; b < size; b++) {
      const pair: Pair = [a, b];
      if (isApart(a, b)) {
        apart.push(pair);
        continue;
      }
      if (!isSeenAs(false, pair)) {
        const found = groupWithin(keptApart(puzzle, a, b), atLeast, singles, steps);
        if (found === "none") together.push(pair);
        else if (found === "out") isThrough = false;
        else seen.push(found);
      }
      if (!isSeenAs(true, pair)) {
        const others = clique.filter((one) => isApart(a, one) || isApart(b, one));
        const found = groupWithin(puzzle, atLeast, [pair, ...others.map((one) => [one])], steps);
        if (found === "none") apart.push(pair);
        else if (found === "out") isThrough = false;
        else seen.push(found);
      }
    }
  return { together, apart, isThrough };
}
