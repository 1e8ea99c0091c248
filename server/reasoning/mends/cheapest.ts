import type { Steps } from "./budget.ts";
import type { Choice, Component } from "./components.ts";
import { both, type Item, type Items } from "./items.ts";
import type { Relaxed } from "./relaxed.ts";
import type { Need, Stance } from "./stances.ts";

/** A set of things to give up, ascending, with its cost. */
export interface Found {
  readonly items: readonly Item[];
  readonly cost: number;
}

/** The cheapest way through part of a component. */
interface State extends Found {
  /** Of what is given up, that which later needs could use too; of the units, the original ones that later units stand apart from. */
  readonly open: readonly Item[];
  readonly originals: readonly number[];
}

/** What bounds a component from below, and how far above that a set can cost and still be of use. */
export interface Bounds {
  readonly relaxed: Relaxed;
  readonly room: number;
}

/** States kept once the budget is used up: enough for an answer, not for a proof. */
const BEAM = 24;

/**
 * The cheapest set for one component, by dynamic programming over its units and sightings. The state is what has been given up that later
 * needs could use; a state is left out if another, with what it lacks of it bought besides, costs no more. Exact unless the
 * budget ran out.
 */
export function cheapest(
  component: Component,
  items: Items,
  steps: Steps,
  { relaxed, room }: Bounds,
): { readonly found: Found | undefined; readonly isExact: boolean } {
  const uses = lastUses(component);
  const position = new Map(component.map(({ unit }, at) => [unit, at]));
  /** Units after a place in the order that a unit stands apart from. */
  const apartAfter = (unit: number, at: number): Choice["apart"] =>
    (component[position.get(unit) ?? -1]?.apart ?? []).filter((one) => (position.get(one.unit) ?? -1) >= at);
  const rest = restOf(component, relaxed);
  const most = rest(0, []) + room + 0.5;
  let isExact = true;
  let states: readonly State[] = [{ items: [], cost: 0, open: [], originals: [] }];

  /** Cost of standing apart, for the originals in `a` that are not in `b`, from the units not yet decided. */
  const apartCost = (a: readonly number[], b: readonly number[], at: number): number =>
    a.reduce(
      (sum, unit) =>
        b.includes(unit) ? sum : apartAfter(unit, at).reduce((all, { item }) => all + items.cost(item), sum),
      0,
    );
  const lacking = (a: readonly Item[], b: readonly Item[]): number =>
    b.reduce((sum, item) => (a.includes(item) ? sum : sum + items.cost(item)), 0);
  const kept = (found: readonly State[], at: number): readonly State[] => {
    steps.use(found.length);
    const best: State[] = [];
    for (const state of found.toSorted((a, b) => a.cost - b.cost)) {
      const isWorse = (other: State): boolean =>
        other.cost + lacking(other.open, state.open) + apartCost(other.originals, state.originals, at) <=
        state.cost;
      if (!best.some(isWorse)) best.push(state);
      if (steps.areUsed && best.length >= BEAM) {
        isExact = false;
        break;
      }
    }
    return best;
  };
  const given = (state: State, item: Item): State => ({
    ...state,
    items: both(state.items, [item]),
    cost: state.cost + items.cost(item),
    open: uses.has(item) ? [...state.open, item] : state.open,
  });
  const meetNeed = (from: readonly State[], { treatments }: Need, at: number): readonly State[] =>
    kept(
      treatments.flatMap(({ item, clauses }) => {
        let reached = item === undefined ? from : from.map((state) => given(state, item));
        for (const clause of clauses) {
          const next = reached.flatMap((state) =>
            clause.some((drop) => state.items.includes(drop))
              ? [state]
              : clause.map((drop) => given(state, drop)),
          );
          reached = clauses.length > 1 ? kept(next, at) : next;
        }
        return reached;
      }),
      at,
    );
  const take = ({ item, needs }: Stance, { unit, apart }: Choice, at: number): readonly State[] => {
    const start = states.map((state) => {
      if (item !== undefined) return given(state, item);
      const against = apart.filter((one) => state.originals.includes(one.unit));
      const paid = against.reduce((before, one) => given(before, one.item), state);
      return apartAfter(unit, at + 1).length > 0 ? { ...paid, originals: [...paid.originals, unit] } : paid;
    });
    return needs.reduce<readonly State[]>((from, need) => meetNeed(from, need, at + 1), start);
  };

  for (const [at, choice] of component.entries()) {
    const reached = choice.stances.flatMap((stance) => take(stance, choice, at));
    const closed = reached.map((state) => ({
      ...state,
      open: state.open.filter((item) => (uses.get(item) ?? -1) > at),
      originals: state.originals.filter((unit) => apartAfter(unit, at + 1).length > 0),
    }));
    states = kept(
      closed.filter(({ cost, open }) => cost + rest(at + 1, open) <= most),
      at + 1,
    );
  }
  const [best] = states;
  return { found: best && { items: best.items, cost: best.cost }, isExact };
}

/** The last choice that could use each thing, of those that more than one clause names. */
function lastUses(component: Component): ReadonlyMap<Item, number> {
  const last = new Map<Item, number>();
  const times = new Map<Item, number>();
  for (const [at, { stances }] of component.entries())
    for (const { needs } of stances)
      for (const { treatments } of needs)
        for (const { clauses } of treatments)
          for (const item of clauses.flat()) {
            last.set(item, at);
            times.set(item, (times.get(item) ?? 0) + 1);
          }
  return new Map([...last].filter(([item]) => (times.get(item) ?? 0) > 1));
}

/** The bound of all choices from one on, if some things have been given up. */
function restOf(component: Component, relaxed: Relaxed): (at: number, has: readonly Item[]) => number {
  const suffix = [0];
  const saved: ReadonlyMap<Item, number>[] = [new Map()];
  for (const choice of component.toReversed()) {
    suffix.unshift((suffix[0] as number) + relaxed.choice(choice, []));
    const before = saved[0] as ReadonlyMap<Item, number>;
    saved.unshift(sum(before, relaxed.sharesOf(choice)));
  }
  return (at, has) => has.reduce((left, item) => left - (saved[at]?.get(item) ?? 0), suffix[at] ?? 0);
}

function sum(a: ReadonlyMap<Item, number>, b: ReadonlyMap<Item, number>): ReadonlyMap<Item, number> {
  const both = new Map(a);
  for (const [item, share] of b) both.set(item, (both.get(item) ?? 0) + share);
  return both;
}
