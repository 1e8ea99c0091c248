import type { Year, Years } from "../../domain/years.ts";
import { type MendBudget, Steps } from "./budget.ts";
import type { Found } from "./cheapest.ts";
import type { Ground } from "./ground.ts";
import { both, type Item, isAllIn } from "./items.ts";
import { listingOf } from "./listing.ts";
import { yearsRestored } from "./restored.ts";
import { type Case, casesOf, cheapestOf, type Meant } from "./search.ts";
import { Waiting } from "./waiting.ts";

/** A set that was found to stand, with where and when it does. */
export interface Story extends Found {
  /** Number of the place. */
  readonly place: number;
  /** Years of making under which it stands there. */
  readonly years: Years;
}

export interface Stories {
  /** Minimal sets, the cheapest first; all of them unless `more`. */
  readonly listed: readonly Story[];
  readonly more: boolean;
  /** The cheapest known, whether or not it could be listed. */
  readonly best: Story | undefined;
  readonly isProved: boolean;
  /** Nothing costs less. */
  readonly atLeast: number;
}

/** What is asked: over which years of making, and how many are listed. */
export interface Asked extends Meant {
  readonly range: Years;
  readonly limit: number;
  /** Number of the one place meant. */
  readonly place?: number;
}

/** Part of the states that the list may use: each of its steps is that much more work. */
const LISTING = 1 / 8;
/** Sets of equal cost looked at beyond the last that is listed, so that the order among them is settled. */
const TIES = 100;

/**
 * What can be given up so that everything holds, the cheapest first. Each set has passed on the graph without what it gives up (M8): one that
 * brings back what contradicts is not shown, and those that hold it are looked for on what is left of the graph.
 */
export function storiesOf(ground: Ground, asked: Asked, budget: MendBudget): Stories {
  const { items } = ground;
  const puzzles = (given: readonly Item[]) => {
    const all = ground.puzzles(given);
    return asked.place === undefined ? all : all.slice(asked.place, asked.place + 1);
  };
  const cases = (given: readonly Item[]) => casesOf(puzzles(given), items, asked.range, asked);
  const root = cases([]);
  const cheapest = cheapestOf(root, items, budget.states);
  const steps = new Steps(Math.ceil(budget.states * LISTING));
  const waiting = new Waiting(items);
  const open = (given: readonly Item[], of: readonly Case[], least: number): void =>
    waiting.open(given, () => listingOf(of, { least, isLong: asked.limit > 1 }, items, steps));
  const standing = (set: readonly Item[]): Story | undefined =>
    standingOf(ground, set, ground.reviving(set), asked);

  if (cheapest.found !== undefined && cheapest.found.cost <= cheapest.atLeast + 0.5)
    open([], root, cheapest.found.cost);
  const listed: Story[] = [];
  const tried = new Set<string>();
  while (listed.length < asked.limit + TIES) {
    const set = waiting.take(listed[asked.limit - 1]?.cost ?? Number.POSITIVE_INFINITY);
    if (set === undefined) break;
    if (tried.has(set.join(" ")) || listed.some((other) => isAllIn(other.items, set))) continue;
    tried.add(set.join(" "));
    const story = standing(set);
    if (story) listed.push(story);
    else {
      steps.use();
      const given = ground.reviving(set);
      const of = cases(given);
      open(given, of, Math.min(...of.map(({ found }) => found.cost)));
    }
  }
  const left = waiting.atLeast();
  if (listed.length > 0) {
    listed.sort((a, b) => a.cost - b.cost || (items.textOf(a.items) < items.textOf(b.items) ? -1 : 1));
    const [best] = listed;
    return {
      listed: listed.slice(0, asked.limit),
      more: left < Number.POSITIVE_INFINITY || listed.length > asked.limit,
      ...{ best, isProved: !ground.isCut, atLeast: best?.cost ?? 0 },
    };
  }
  const best = cheapestStanding(ground, cases, cheapest.found, standing, budget);
  const atLeast = Math.max(cheapest.atLeast, waiting.isEmpty ? 0 : left);
  return {
    ...{ listed: best === undefined ? [] : [best], best },
    more: waiting.isEmpty ? root.length > 0 : left < Number.POSITIVE_INFINITY,
    isProved: best !== undefined && best.cost <= atLeast + 0.5 && !ground.isCut,
    atLeast: best === undefined ? atLeast : Math.min(atLeast, best.cost),
  };
}

/** Rounds of giving up and looking again; each gives up more, so few are needed. */
const ROUNDS = 12;

/** The cheapest set, and where what it gives up brings something back, the cheapest that holds that too. */
function cheapestStanding(
  { items, reviving }: Ground,
  cases: (given: readonly Item[]) => readonly Case[],
  cheapest: Found | undefined,
  standing: (set: readonly Item[]) => Story | undefined,
  { states }: MendBudget,
): Story | undefined {
  let set = cheapest?.items;
  for (let round = 0; round < ROUNDS && set !== undefined; round++) {
    const story = standing(set);
    if (story) return story;
    const given = reviving(set);
    const { found } = cheapestOf(cases(given), items, states);
    set = found && both(given, found.items);
  }
  return undefined;
}

/** A set as a story, if it stands on what it leaves of the graph: in the earliest year, of equal years at the first place. */
export function standingOf(
  ground: Ground,
  set: readonly Item[],
  given: readonly Item[],
  { range, isMeant, place: only }: Pick<Asked, "range" | "isMeant" | "place">,
): Story | undefined {
  const has = new Set(set);
  let best: Story | undefined;
  for (const [place, puzzle] of ground.puzzles(given).entries()) {
    if (only !== undefined && place !== only) continue;
    const years = yearsRestored(puzzle, has, range, isMeant);
    const first = years[0]?.[0];
    if (first === undefined || (best !== undefined && first >= (best.years[0]?.[0] as Year))) continue;
    best = { items: set, cost: ground.items.costOf(set), place, years };
  }
  return best;
}
