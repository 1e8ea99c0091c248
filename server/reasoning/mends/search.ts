import type { Year, Years } from "../../domain/years.ts";
import { Steps } from "./budget.ts";
import { cheapest, type Found } from "./cheapest.ts";
import { combined } from "./combined.ts";
import { type Component, componentsAt } from "./components.ts";
import { Heap } from "./heap.ts";
import { inOrder } from "./in-order.ts";
import { both, type Items } from "./items.ts";
import type { Puzzle } from "./puzzle.ts";
import { type Relaxed, relax } from "./relaxed.ts";
import { stancesOf } from "./stances.ts";
import { timesIn } from "./times.ts";

/** One place and one year of making, with what is to be decided and the least that it can cost. */
export interface Case {
  readonly components: readonly { readonly component: Component; readonly relaxed: Relaxed }[];
  readonly atLeast: number;
}

/** The cheapest set over several cases. Nothing is cheaper than `atLeast`; exact if it is as cheap as that. */
export interface Cheapest {
  readonly found: Found | undefined;
  readonly atLeast: number;
}

/** Cases of several places, the most promising first. */
export function casesOf(
  puzzles: readonly Puzzle[],
  items: Items,
  range: Years,
  isMeant?: (unit: number) => boolean,
): readonly Case[] {
  return puzzles
    .flatMap((puzzle) => {
      const stances = stancesOf(puzzle);
      return timesIn(puzzle, range).flatMap((year) => caseAt(puzzle, year, stances, items, isMeant) ?? []);
    })
    .sort((a, b) => a.atLeast - b.atLeast);
}

/** The case of one year; nothing if some unit cannot be saved in it at all. */
export function caseAt(
  puzzle: Puzzle,
  year: Year,
  stances: ReturnType<typeof stancesOf>,
  items: Items,
  isMeant?: (unit: number) => boolean,
): Case | undefined {
  const components = componentsAt(puzzle, year, stances, isMeant)?.map((component) => ({
    component,
    relaxed: relax(component, items),
  }));
  if (components === undefined) return undefined;
  return { components, atLeast: components.reduce((sum, { relaxed }) => sum + relaxed.from(0, []), 0) };
}

/** The cheapest set of all cases, by dynamic programming, within a number of states. */
export function cheapestOf(cases: readonly Case[], items: Items, states: number): Cheapest {
  const steps = new Steps(states);
  let best: Found | undefined;
  let atLeast = Number.POSITIVE_INFINITY;
  for (const one of cases) {
    if (best !== undefined && one.atLeast >= best.cost - 0.5) break;
    if (steps.areUsed && best !== undefined) {
      atLeast = Math.min(atLeast, one.atLeast);
      break;
    }
    const { found, isExact } = cheapestIn(one, items, steps);
    if (found === undefined) continue;
    atLeast = Math.min(atLeast, isExact ? found.cost : one.atLeast);
    if (best === undefined || found.cost < best.cost) best = found;
  }
  return { found: best, atLeast };
}

function cheapestIn(
  { components }: Case,
  items: Items,
  steps: Steps,
): { readonly found: Found | undefined; readonly isExact: boolean } {
  let found: Found = { items: [], cost: 0 };
  let isExact = true;
  for (const { component } of components) {
    const own = cheapest(component, items, steps);
    if (own === undefined) return { found: undefined, isExact };
    isExact &&= own.isExact;
    found = { items: both(found.items, own.items), cost: found.cost + own.cost };
  }
  return { found, isExact };
}

/** Sets of all cases in order of cost; the same set can come up in several. */
export interface Listing {
  readonly next: () => Found | undefined;
  /** Nothing that is still to come costs less; infinite at the end. */
  readonly atLeast: () => number;
}

export function listingOf(cases: readonly Case[], items: Items, steps: Steps): Listing {
  interface Source {
    next?: () => Found | undefined;
    readonly of: Case;
    readonly found?: Found;
  }
  const heap = new Heap<Source>();
  let left = 0;
  let lost = Number.POSITIVE_INFINITY;
  const open = (one: Source): void => {
    const next =
      one.next ??
      combined(one.of.components.map(({ component, relaxed }) => inOrder(component, items, relaxed, steps)));
    const found = next();
    if (found) heap.put(found.cost, { next, of: one.of, found });
    if (steps.areUsed) lost = Math.min(lost, one.found?.cost ?? one.of.atLeast);
  };
  /** Cases come sorted; one is looked at only when nothing cheaper is left. */
  const openAllUpTo = (): void => {
    for (let one = cases[left]; one !== undefined && one.atLeast <= heap.least + 0.5; one = cases[left]) {
      left++;
      open({ of: one });
    }
  };
  return {
    next: () => {
      openAllUpTo();
      const top = heap.take();
      if (top?.found === undefined) return undefined;
      open(top);
      return top.found.cost > lost ? undefined : top.found;
    },
    atLeast: () => Math.min(lost, heap.least, cases[left]?.atLeast ?? Number.POSITIVE_INFINITY),
  };
}
