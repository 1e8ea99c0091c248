import type { Hardness } from "../../domain/claim.ts";
import type { Place } from "../../domain/report.ts";
import type { Mend, Mends } from "../../domain/weighing/mends.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import { ALL_YEARS, type Span, type Year, type Years, yearsToJson } from "../../domain/years.ts";
import type { Subject } from "../check.ts";
import { MEND_BUDGET, type MendBudget } from "./budget.ts";
import { type Ground, groundOf } from "./ground.ts";
import { type Items, leastPriceIn, priceIn } from "./items.ts";
import { perPart } from "./per-part.ts";
import { pricesOf } from "./prices.ts";
import { upTo } from "./spans.ts";
import { type Story, storiesOf } from "./stories.ts";

/**
 * What would have to be true for an attribution to stand: for it to be possible, and for nothing in it to be unusual as well (M1). The
 * same for the same piece and graph, whatever the order of its input; work is bounded by `budget`.
 */
export function readMends(
  subject: Subject,
  odds: AssumedOdds,
  budget: MendBudget = MEND_BUDGET,
): { readonly possible: Mends; readonly usual: Mends } {
  const prices = pricesOf(subject, odds);
  const read = (level: Hardness): Mends => mendsOf(groundOf(subject, level, prices), level, subject, budget);
  return { possible: read("physical"), usual: read("practice") };
}

/** What the answers are read from: the claimed years, the year of the examination, the places. */
export type MendScene = Pick<Subject, "claimed" | "places"> & {
  readonly piece: Pick<Subject["piece"], "examined">;
};

/** Mends of one level. */
export function mendsOf(
  ground: Ground,
  level: Hardness,
  { claimed, places, piece }: MendScene,
  budget: MendBudget,
): Mends {
  const range = upTo([claimed], piece.examined);
  const { listed, more, best, isProved, atLeast } = storiesOf(
    ground,
    { range, limit: budget.listed },
    budget,
  );
  const asMend = (story: Story): Mend => mendOf(story, firstYear(story.years), ground.items, places);
  const moved = best?.cost === 0 ? undefined : movedDate(ground, { claimed, places, piece }, best, budget);
  return {
    level,
    ...(best === undefined ? {} : { best: asMend(best) }),
    proved: isProved,
    lowerBound: Number.isFinite(atLeast)
      ? isProved && best
        ? priceIn(best.cost)
        : leastPriceIn(atLeast)
      : 0,
    perPart: best === undefined ? [] : perPart(ground, best, firstYear(best.years), budget),
    listed: listed.map(asMend),
    more,
    ...(moved === undefined ? {} : { movedDate: moved }),
  };
}

/** The cheapest story in any year, if it is cheaper than those of the claimed years (M11). */
function movedDate(
  ground: Ground,
  { claimed, places, piece }: MendScene,
  claimedBest: Story | undefined,
  budget: MendBudget,
): Mends["movedDate"] {
  const range = upTo(ALL_YEARS, piece.examined);
  const below = claimedBest?.cost ?? Number.POSITIVE_INFINITY;
  const { best } = storiesOf(ground, { range, limit: 1, below }, budget);
  if (best === undefined || best.cost >= below) return undefined;
  const year = nearest(best.years, claimed);
  return { mend: mendOf(best, year, ground.items, places), years: yearsToJson(best.years) };
}

/** A set that stands as the answer tells it. */
export const mendOf = (
  { items: given, cost, place }: Story,
  year: Year,
  items: Items,
  places: readonly Place[],
): Mend => ({
  givenUp: items.sorted(given).map((item) => items.givenUp(item)),
  price: priceIn(cost),
  year,
  place: places[place] ?? { region: null, elsewhere: false },
});

/** The earliest year; of an endless time before, its last. */
export function firstYear(years: Years): Year {
  const [first, last] = years[0] as Span;
  return Number.isFinite(first) ? first : last;
}

/** The year next to the claimed ones; of two as near, the earlier. */
function nearest(years: Years, [from, until]: Span): Year {
  const near = years.map(([first, last]) =>
    first > until ? first : last < from ? last : Math.max(first, Number.isFinite(from) ? from : last),
  );
  const distance = (year: Year): number => Math.max(0, from - year, year - until);
  return near.reduce((best, year) => (distance(year) < distance(best) ? year : best));
}
