import type { Year, Years } from "../../domain/years.ts";
import { type Ascent, ascend } from "./ascent.ts";
import { Steps } from "./budget.ts";
import { cheapest, type Found } from "./cheapest.ts";
import { type Choice, choicesAt, componentsOf } from "./components.ts";
import { fixed } from "./fixed.ts";
import { both, type Items } from "./items.ts";
import type { Puzzle } from "./puzzle.ts";
import { timesIn } from "./times.ts";

/** One place and one year of making, with what is to be decided, the least that it can cost and a set that will do. */
export interface Case extends Ascent {
  readonly choices: readonly Choice[];
}

/** The cheapest set over several cases. Nothing is cheaper than `atLeast`; exact if it is as cheap as that. */
export interface Cheapest {
  readonly found: Found | undefined;
  readonly atLeast: number;
}

/** Which sets are meant: of which units, and of what cost; all unless said. */
export interface Meant {
  readonly isMeant?: (unit: number) => boolean;
  /** Sets that cost as much, or more, are not. */
  readonly below?: number;
}

/**
 * Cases of several places, the most promising first. A year in which some unit cannot be saved at all is none. The bound is raised only where
 * the first one leaves room for something cheaper than what is known.
 */
export function casesOf(
  puzzles: readonly Puzzle[],
  items: Items,
  range: Years,
  { isMeant, below = Number.POSITIVE_INFINITY }: Meant = {},
): readonly Case[] {
  const first = puzzles
    .flatMap((puzzle) =>
      timesIn(puzzle, range).flatMap((year: Year) => {
        const choices = choicesAt(puzzle, year, isMeant);
        return choices === undefined ? [] : [{ choices, ...ascend(choices, items, { rounds: 1 }) }];
      }),
    )
    .filter(({ atLeast }) => atLeast < below - 0.5)
    .sort((a, b) => a.atLeast - b.atLeast);
  let least = first.reduce((cost, { found }) => Math.min(cost, found.cost), below);
  return first
    .map((one) => {
      if (one.atLeast >= least - 0.5) return one;
      const raised = { choices: one.choices, ...ascend(one.choices, items, { enough: least }) };
      least = Math.min(least, raised.found.cost);
      return raised;
    })
    .sort((a, b) => a.atLeast - b.atLeast);
}

/** The cheapest set of all cases, by dynamic programming on what the bounds leave, within a number of states. */
export function cheapestOf(cases: readonly Case[], items: Items, states: number): Cheapest {
  const steps = new Steps(states);
  let best = cases.reduce<Found | undefined>(
    (least, { found }) => (least === undefined || found.cost < least.cost ? found : least),
    undefined,
  );
  let atLeast = best?.cost ?? Number.POSITIVE_INFINITY;
  for (const one of cases) {
    if (best === undefined || one.atLeast >= best.cost - 0.5) break;
    if (steps.areUsed) {
      atLeast = Math.min(atLeast, one.atLeast);
      break;
    }
    const { found, isExact } = cheapestIn(one, best.cost - 1, items, steps);
    if (!isExact) atLeast = Math.min(atLeast, one.atLeast);
    if (found !== undefined && found.cost < best.cost) best = found;
  }
  return { found: best, atLeast: Math.min(atLeast, best?.cost ?? atLeast) };
}

/** The cheapest of one case that costs no more than `most`, if there is one. */
function cheapestIn(
  { choices, relaxed: read, atLeast }: Case,
  most: number,
  items: Items,
  steps: Steps,
): { readonly found: Found | undefined; readonly isExact: boolean } {
  let found: Found = { items: [], cost: 0 };
  let isExact = true;
  const relaxed = read();
  for (const component of componentsOf(fixed(choices, relaxed, atLeast, most))) {
    const own = cheapest(component, items, steps, { relaxed, room: most - atLeast });
    isExact &&= own.isExact;
    if (own.found === undefined) return { found: undefined, isExact };
    found = { items: both(found.items, own.found.items), cost: found.cost + own.found.cost };
  }
  return { found, isExact };
}
