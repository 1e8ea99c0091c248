import { meet, type Year, type Years } from "../../domain/years.ts";
import type { Item } from "./items.ts";
import type { Puzzle } from "./puzzle.ts";
import type { Stance } from "./stances.ts";

/**
 * The years of making within a range in which everything holds once a set is given up. What is given up may be so and need not: the more is
 * given up, the more holds.
 */
export function yearsRestored(
  puzzle: Puzzle,
  givenUp: ReadonlySet<Item>,
  range: Years,
  isMeant: (unit: number) => boolean = () => true,
): Years {
  const found: (readonly [Year, Year])[] = [];
  for (const span of meet(puzzle.spans, range)) {
    const isIn = (year: Year): boolean => isRestored(puzzle, givenUp, year, isMeant);
    if (puzzle.pairs.length === 0) {
      if (isIn(Number.isFinite(span[0]) ? span[0] : span[1])) found.push(span);
      continue;
    }
    // Parts that are separate can be apart within one span: its first and last year differ from those between.
    const [first, last] = [Math.max(span[0], Math.min(span[1], BEFORE)), span[1]];
    for (const [from, until] of [
      [first, first],
      [first + 1, last - 1],
      [last, last],
    ] as const)
      if (from <= until && isIn(from)) found.push([from === first ? span[0] : from, until]);
  }
  return joinTouching(found);
}

/** A year before all that is written down; stands for the endless time before the first span begins to count. */
const BEFORE = 0;

const joinTouching = (spans: readonly (readonly [Year, Year])[]): Years => {
  const joined: [Year, Year][] = [];
  for (const [first, last] of spans) {
    const before = joined.at(-1);
    if (before && first <= before[1] + 1) before[1] = Math.max(before[1], last);
    else joined.push([first, last]);
  }
  return joined;
};

function isRestored(
  { units, pairs, stancesIn }: Puzzle,
  givenUp: ReadonlySet<Item>,
  year: Year,
  isMeant: (unit: number) => boolean,
): boolean {
  const has = (item: Item | undefined): boolean => item !== undefined && givenUp.has(item);
  const isMet = ({ needs }: Stance): boolean =>
    needs.every(({ treatments }) =>
      treatments.some(
        ({ item, clauses }) =>
          (item === undefined || has(item)) && clauses.every((clause) => clause.some(has)),
      ),
    );
  const paired = new Set(pairs.flatMap((pair) => pair.units));
  const mustBeOriginal = new Set<number>();
  for (const unit of units.keys()) {
    if (!isMeant(unit)) continue;
    const can = stancesIn(unit, year).filter(
      (stance) => (stance.item === undefined || has(stance.item)) && isMet(stance),
    );
    if (can.length === 0) return false;
    if (paired.has(unit) && can.every(({ item }) => item === undefined)) mustBeOriginal.add(unit);
  }
  return pairs.every((pair) => has(pair.item) || !pair.units.every((unit) => mustBeOriginal.has(unit)));
}
