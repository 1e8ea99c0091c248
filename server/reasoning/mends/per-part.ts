import type { ClaimId, PartId } from "../../domain/ids.ts";
import type { MendOption, Mends } from "../../domain/weighing/mends.ts";
import type { Year } from "../../domain/years.ts";
import type { MendBudget } from "./budget.ts";
import { clauseItems } from "./components.ts";
import type { Ground } from "./ground.ts";
import { type Item, type Items, priceIn } from "./items.ts";
import type { Puzzle } from "./puzzle.ts";
import { type Story, storiesOf } from "./stories.ts";

/** Steps for the options of one row. */
const ROW_STATES = 2_000;

interface Row {
  readonly units: readonly number[];
  readonly parts: readonly PartId[];
  /** Everything that could be given up of claims and assumptions in it. */
  readonly shares: ReadonlySet<Item>;
}

/**
 * The same mends, part by part: at the place and in the year of the best, what saves each part that does not simply fit (M10). One option of
 * each row together is a mend; what two rows share is paid once. Parts that are separate from one another make one row.
 */
export function perPart(ground: Ground, best: Story, year: Year, budget: MendBudget): Mends["perPart"] {
  const puzzle = ground.puzzles([])[best.place];
  if (puzzle === undefined) return [];
  const rows = rowsOf(puzzle, year);
  const open = new Set(rows.flatMap(({ units }) => units));
  return rows.flatMap(({ units, parts }, at) => {
    const isMeant = (unit: number): boolean => units.includes(unit) || !open.has(unit);
    const asked = { range: [[year, year]] as const, limit: budget.options, isMeant, place: best.place };
    const { listed } = storiesOf(ground, asked, { ...budget, states: ROW_STATES });
    const elsewhere = new Set(rows.flatMap((row, i) => (i === at ? [] : [...row.shares])));
    const options = listed
      .filter(({ items }) => items.length > 0)
      .map((story) => optionOf(story, elsewhere, ground.items));
    return options.length === 0 ? [] : [{ parts, options }];
  });
}

function rowsOf(puzzle: Puzzle, year: Year): readonly Row[] {
  const { stancesIn: stances } = puzzle;
  const paired = new Set(puzzle.pairs.flatMap(({ units }) => units));
  const open = [...puzzle.units.keys()].filter(
    (unit) =>
      paired.has(unit) ||
      !stances(unit, year).some(({ item, needs }) => item === undefined && needs.length === 0),
  );
  const first = new Map(open.map((unit) => [unit, unit]));
  for (const { units } of puzzle.pairs) {
    const [a, b] = units.map((unit) => first.get(unit) ?? unit) as [number, number];
    for (const [unit, of] of first) if (of === a || of === b) first.set(unit, Math.min(a, b));
  }
  return [...Map.groupBy(open, (unit) => first.get(unit)).values()].map((units) => ({
    units,
    parts: units.flatMap((unit) => puzzle.units[unit]?.parts ?? []),
    shares: new Set(units.flatMap((unit) => [...clauseItems(stances(unit, year))])),
  }));
}

const optionOf = ({ items: given, cost }: Story, elsewhere: ReadonlySet<Item>, items: Items): MendOption => ({
  givenUp: items.sorted(given).map((item) => items.givenUp(item)),
  price: priceIn(cost),
  shared: [
    ...new Set(given.filter((item) => elsewhere.has(item)).flatMap((item) => claimsOf(item, items))),
  ].sort(),
});

function claimsOf(item: Item, items: Items): readonly ClaimId[] {
  const what = items.givenUp(item);
  return what.kind === "claim" ? [what.claim] : what.kind === "rivals" ? what.claims : [];
}
