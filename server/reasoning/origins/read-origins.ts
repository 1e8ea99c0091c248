import { BUDGET } from "../../domain/assumptions.ts";
import { compareText } from "../../domain/compare.ts";
import type { PartId } from "../../domain/ids.ts";
import type { OriginCount, Origins } from "../../domain/weighing/origins.ts";
import { hasYear, sameYears, type Years } from "../../domain/years.ts";
import type { Subject } from "../check.ts";
import { fewestGroups, type Steps } from "./fewest-groups.ts";
import { forcedPairs } from "./forced-pairs.ts";
import { largestCliques } from "./largest-cliques.ts";
import { noBits, type Origin, type OriginPuzzle, originPuzzle, setBit } from "./origin-puzzle.ts";
import { type WhereAndWhen, whereAndWhenReader } from "./where-and-when.ts";

/** Largest sets of parts apart in pairs that are told. */
const WITNESSES = 10;

/** In how many separate pieces the parts of one must have begun, at the least (docs/spec/12-origins.md). */
export function readOrigins(subject: Subject): Origins {
  const read = whereAndWhenReader(subject);
  const known: Known[] = [];
  const countOf = (all: readonly WhereAndWhen[]): OriginCount => {
    const found = known.find((before) => areSame(before.all, all))?.count ?? countOrigins(all, subject);
    known.push({ all, count: found });
    return found;
  };
  const atLeast = (all: readonly WhereAndWhen[]): number =>
    known.find((before) => areSame(before.all, all))?.count.atLeast ?? atLeastOf(all, subject);
  const [possible, usual] = (["physical", "practice"] as const).map((level) =>
    countOf(read({ level, withFallback: false })),
  ) as [OriginCount, OriginCount];
  return {
    ...{ possible, usual },
    moreByFallback:
      atLeast(read({ level: "physical", withFallback: true })) > possible.atLeast ||
      atLeast(read({ level: "practice", withFallback: true })) > usual.atLeast,
  };
}

/** Where and when, and the count that follows. */
interface Known {
  readonly all: readonly WhereAndWhen[];
  readonly count: OriginCount;
}

const areSame = (a: readonly WhereAndWhen[], b: readonly WhereAndWhen[]): boolean =>
  a.every(({ years }, i) => years.every((set, j) => sameYears(set, b[i]?.years[j] as Years)));

/** Parts with nowhere and no year to be from are told, and not counted. */
function countOrigins(all: readonly WhereAndWhen[], subject: Subject): OriginCount {
  const { puzzle, impossible } = puzzleOf(all, subject);
  const steps = { left: BUDGET.grouped };
  const { cliques, isProved } = largestCliques(puzzle, WITNESSES, { left: BUDGET.grouped });
  const fewest = fewestGroups(puzzle, cliques[0] ?? [], steps);
  // One origin for all: nothing is forced to be together.
  const forced =
    fewest.isProved && fewest.atLeast > 1
      ? forcedPairs(puzzle, fewest, cliques[0] ?? [], steps)
      : { together: [], apart: [], isThrough: fewest.isProved };
  const partsOf = (origin: number): readonly PartId[] => (puzzle.origins[origin] as Origin).parts;
  const pairs = (found: readonly (readonly [number, number])[]) =>
    found
      .flatMap(([a, b]) => partsOf(a).flatMap((one) => partsOf(b).map((other) => inOrder(one, other))))
      .sort(([a, b], [c, d]) => compareText(a, c) || compareText(b, d));
  const groups = Map.groupBy(puzzle.origins.keys(), (origin) => fewest.grouping[origin]);
  return {
    atLeast: Math.max(fewest.atLeast, Math.min(1, all.length)),
    groups: [...groups.values()]
      .map((origins) => origins.flatMap(partsOf).sort(compareText))
      .sort(([a = ""], [b = ""]) => compareText(a, b)),
    witnesses: cliques
      .filter((clique) => clique.length > 1)
      .map((clique) => clique.map((origin) => partsOf(origin)[0] as PartId)),
    alwaysTogether: pairs(forced.together),
    alwaysApart: pairs(forced.apart),
    impossible,
    cut: !isProved || !forced.isThrough,
  };
}

function atLeastOf(all: readonly WhereAndWhen[], subject: Subject): number {
  const { puzzle } = puzzleOf(all, subject);
  const steps: Steps = { left: BUDGET.grouped };
  const [clique = []] = largestCliques(puzzle, 1, steps).cliques;
  return fewestGroups(puzzle, clique, steps).atLeast;
}

const inOrder = (a: PartId, b: PartId): readonly [PartId, PartId] =>
  compareText(a, b) < 0 ? [a, b] : [b, a];

/**
 * Cells are the places, each in the years in which something's time there ends: what is common to several can slide on to the first
 * such year. Cells that the same parts allow are one.
 */
function puzzleOf(
  all: readonly WhereAndWhen[],
  { piece, parts }: Subject,
): { readonly puzzle: OriginPuzzle; readonly impossible: readonly (readonly PartId[])[] } {
  const able = all.filter(({ years }) => years.some((set) => set.length > 0));
  const cells = new Map<string, readonly number[]>();
  for (let place = 0; place < (all[0]?.years.length ?? 0); place++) {
    const sets = able.map(({ years }) => years[place] as Years);
    for (const year of new Set(sets.flat().map(([, last]) => last))) {
      const members = [...sets.keys()].filter((i) => hasYear(sets[i] as Years, year));
      cells.set(members.join(" "), members);
    }
  }
  const bits = able.map(() => noBits(cells.size));
  let cell = 0;
  for (const members of cells.values()) {
    for (const member of members) setBit(bits[member] as Origin["cells"], cell);
    cell++;
  }
  const at = new Map(able.flatMap((one, i) => one.parts.map((part) => [parts.groupOf(part), i] as const)));
  const separate = piece.separate.flatMap(([a, b]): (readonly [number, number])[] => {
    const [i, j] = [at.get(parts.groupOf(a)), at.get(parts.groupOf(b))];
    return i === undefined || j === undefined || i === j ? [] : [[i, j]];
  });
  return {
    puzzle: originPuzzle(
      able.map((one, i) => ({ parts: one.parts, cells: bits[i] as Origin["cells"] })),
      separate,
    ),
    impossible: all.filter((one) => !able.includes(one)).map((one) => one.parts),
  };
}
