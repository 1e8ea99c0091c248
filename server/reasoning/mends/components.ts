import type { Year } from "../../domain/years.ts";
import type { Item } from "./items.ts";
import type { Puzzle } from "./puzzle.ts";
import type { Stance } from "./stances.ts";

/** A unit that does not simply fit, with the stances it can take. */
export interface Choice {
  readonly unit: number;
  readonly stances: readonly Stance[];
  /** Units that cannot be of one making with it, unless that is given up. */
  readonly apart: readonly { readonly unit: number; readonly item: Item }[];
}

/** Choices that hang together by what they share; none shares anything with another component. */
export type Component = readonly Choice[];

/** What has to be decided in one year of making; nothing if some unit has no stance at all. */
export function choicesAt(
  puzzle: Puzzle,
  year: Year,
  isMeant: (unit: number) => boolean = () => true,
): readonly Choice[] | undefined {
  const pairs = puzzle.pairs.filter(({ units }) => units.every(isMeant));
  const choices: Choice[] = [];
  for (const unit of puzzle.units.keys()) {
    if (!isMeant(unit)) continue;
    const found = puzzle.stancesIn(unit, year);
    if (found.length === 0) return undefined;
    const apart = pairs.flatMap(({ units: [a, b], item }) =>
      a === unit ? [{ unit: b, item }] : b === unit ? [{ unit: a, item }] : [],
    );
    if (apart.length > 0 || !found.some(({ item, needs }) => item === undefined && needs.length === 0))
      choices.push({ unit, stances: found, apart });
  }
  return choices;
}

/** Divides choices by what they share, and puts each component into an order in which little is open at a time. */
export function componentsOf(choices: readonly Choice[]): readonly Component[] {
  const shares = new Map(choices.map(({ unit, stances }) => [unit, clauseItems(stances)]));
  const byItem = new Map<Item, number[]>();
  for (const [unit, items] of shares)
    for (const item of items) {
      const units = byItem.get(item);
      if (units) units.push(unit);
      else byItem.set(item, [unit]);
    }
  const links = [
    ...byItem.values(),
    ...choices.flatMap(({ unit, apart }) => apart.map((one) => [unit, one.unit])),
  ];
  const of = new Map(choices.map((choice) => [choice.unit, choice]));
  return joined([...of.keys()], links).map((units) =>
    ordered(units, shares).flatMap((unit) => of.get(unit) ?? []),
  );
}

/** Everything in the clauses of these stances. */
export const clauseItems = (stances: readonly Stance[]): ReadonlySet<Item> =>
  new Set(
    stances.flatMap(({ needs }) =>
      needs.flatMap(({ treatments }) => treatments.flatMap(({ clauses }) => clauses.flat())),
    ),
  );

/** Divides units by what links them; both in the order of the units. */
function joined(units: readonly number[], links: readonly (readonly number[])[]): readonly number[][] {
  const parent = new Map(units.map((unit) => [unit, unit]));
  const root = (unit: number): number => {
    const above = parent.get(unit) ?? unit;
    return above === unit ? unit : root(above);
  };
  for (const [first, ...others] of links)
    for (const other of others) {
      const [a, b] = [root(first as number), root(other)];
      parent.set(Math.max(a, b), Math.min(a, b));
    }
  return [...Map.groupBy(units, root).values()];
}

/** An order in which few shared things are open at a time: always the unit that leaves the fewest open, the first of equals. */
function ordered(
  units: readonly number[],
  sharesOf: ReadonlyMap<number, ReadonlySet<Item>>,
): readonly number[] {
  const left = new Set(units);
  const waiting = new Map<Item, number>();
  for (const unit of units)
    for (const item of sharesOf.get(unit) ?? []) waiting.set(item, (waiting.get(item) ?? 0) + 1);
  const open = new Set<Item>();
  const order: number[] = [];
  while (left.size > 0) {
    let best: { readonly unit: number; readonly opens: number } | undefined;
    for (const unit of left) {
      let opens = 0;
      for (const item of sharesOf.get(unit) ?? []) {
        if (waiting.get(item) === 1) opens -= open.has(item) ? 1 : 0;
        else if (!open.has(item)) opens++;
      }
      if (best === undefined || opens < best.opens) best = { unit, opens };
    }
    const { unit } = best as { unit: number };
    left.delete(unit);
    order.push(unit);
    for (const item of sharesOf.get(unit) ?? []) {
      const rest = (waiting.get(item) ?? 1) - 1;
      waiting.set(item, rest);
      if (rest === 0) open.delete(item);
      else open.add(item);
    }
  }
  return order;
}
