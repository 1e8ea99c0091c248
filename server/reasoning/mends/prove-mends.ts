import type { Mends } from "../../domain/weighing/mends.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { Subject } from "../check.ts";
import { asIntegerProgram, itemsTaken } from "./as-integer-program.ts";
import { MEND_BUDGET, type MendBudget } from "./budget.ts";
import { type Ground, groundOf } from "./ground.ts";
import { leastPriceIn } from "./items.ts";
import { perPart } from "./per-part.ts";
import { pricesOf } from "./prices.ts";
import { firstYear, type MendScene, mendOf } from "./read-mends.ts";
import { casesOf } from "./search.ts";
import { upTo } from "./spans.ts";
import { type Story, standingOf } from "./stories.ts";

/** Solves a program to the optimum: the value of each of its variables; nothing if the solver did not get there. */
export type Solve = (program: string) => ((variable: string) => number | undefined) | undefined;

/**
 * Mends that could not be proved within the budget, with what a solver of integer programs makes of them, one case after the other (M9).
 * Mends that are proved come back as they are, and the solver is not asked.
 */
export function proveMends(
  subject: Subject,
  odds: AssumedOdds,
  mends: Mends,
  solve: Solve,
  budget: MendBudget = MEND_BUDGET,
): Mends {
  if (mends.proved) return mends;
  return proveOn(groundOf(subject, mends.level, pricesOf(subject, odds)), subject, mends, solve, budget);
}

/** The same on a ground that is there. */
export function proveOn(
  ground: Ground,
  scene: MendScene,
  mends: Mends,
  solve: Solve,
  budget: MendBudget,
): Mends {
  const { items } = ground;
  const range = upTo([scene.claimed], scene.piece.examined);
  let best: Story | undefined;
  let least = Number.POSITIVE_INFINITY;
  let isRevived = false;
  const known = (): number => Math.min(best?.cost ?? Number.POSITIVE_INFINITY, least);
  for (const one of casesOf(ground.puzzles([]), items, range)) {
    if (one.atLeast >= known() - 0.5) break;
    const program = asIntegerProgram(one.choices, items);
    const solved = solve(program.text);
    if (solved === undefined) {
      least = Math.min(least, one.atLeast);
      continue;
    }
    const set = itemsTaken(program, solved);
    least = Math.min(least, items.costOf(set));
    const story = standingOf(ground, set, ground.reviving(set), { range });
    if (story === undefined) isRevived = true;
    else if (best === undefined || story.cost < best.cost) best = story;
  }
  const lowerBound = Math.max(mends.lowerBound, Number.isFinite(least) ? leastPriceIn(least) : 0);
  if (best === undefined || (mends.best !== undefined && mends.best.price <= mendPrice(best, ground, scene)))
    return { ...mends, lowerBound, proved: mends.best?.price === lowerBound && !isRevived && !ground.isCut };
  const mend = mendOf(best, firstYear(best.years), items, scene.places);
  return {
    ...mends,
    best: mend,
    lowerBound: Math.min(lowerBound, mend.price),
    proved: mend.price <= lowerBound && !isRevived && !ground.isCut,
    perPart: perPart(ground, best, mend.year, budget),
    listed: [mend, ...mends.listed.filter(({ price }) => price >= mend.price)].slice(0, budget.listed),
  };
}

const mendPrice = (story: Story, { items }: Ground, { places }: MendScene): number =>
  mendOf(story, firstYear(story.years), items, places).price;
