import type { ClaimId, TermId } from "../../domain/ids.ts";
import type { Dates } from "../../domain/weighing/dates.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { ClosedList } from "../bound.ts";
import { curve, type Grid } from "./curve.ts";
import type { DatedTerm } from "./dated-term.ts";

/** How common a term was, year by year, at one place, and what that rests on. */
export interface Currency {
  /** From the leak to 1, by year - from. */
  readonly byYear: Float64Array;
  readonly claims: ReadonlySet<ClaimId>;
  /** Some of it rests on "nobody had it earlier". */
  readonly assumes: boolean;
  /** Shapes assumed on the way, by term. */
  readonly shapes: ReadonlyMap<TermId, Dates["assumedShapes"][number]["missing"]>;
}

/** A term whose use is taken as certain (1) or excluded (0), whatever the year. */
export interface Forced {
  readonly term: TermId;
  readonly to: 0 | 1;
}

/** The odds that curves depend on. */
export type CurveOdds = Pick<AssumedOdds, "leak" | "copied" | "lateSurvival">;

/** Asks how common a term was. */
export type CurrencyOf = (term: TermId, forced?: Forced) => Currency;

/** A term at one place: its own dates, and the closed lists of what it requires. */
export interface StandingTerm {
  readonly dated: DatedTerm;
  readonly lists: readonly ClosedList[];
}

/** Always in use, or never. */
export const steady = (value: 0 | 1, { from, to }: Grid): Currency => ({
  byYear: new Float64Array(to - from + 1).fill(value),
  ...{ claims: new Set(), assumes: false, shapes: new Map() },
});

/** The currency of one term, from its own dates and that of what it requires: no more common than some way of making it. */
export function currencyFrom(
  term: TermId,
  { dated, lists }: StandingTerm,
  below: (needed: TermId) => Currency,
  grid: Grid,
  odds: CurveOdds,
): Currency {
  const claims = new Set(dated.claims);
  const shapes = new Map(dated.missing.length > 0 ? [[term, dated.missing]] : []);
  let { assumes } = dated;
  // A copyist copies looks: what a tool leaves, and what a shop does, keeps its own time.
  const isOfTheShop = lists.length > 0 || /^(tool|practice)\./.test(term);
  const byYear = ofItself(dated, grid, isOfTheShop ? { ...odds, copied: 0 } : odds);
  for (const { claim } of lists) {
    claims.add(claim.id);
    const none = new Float64Array(byYear.length).fill(1);
    for (const way of claim.ways) {
      const all = new Float64Array(byYear.length).fill(1);
      for (const needed of way) {
        const found = below(needed);
        multiply(all, found.byYear);
        for (const id of found.claims) claims.add(id);
        for (const [shaped, missing] of found.shapes) shapes.set(shaped, missing);
        assumes ||= found.assumes;
      }
      for (let t = 0; t < all.length; t++) none[t] = (none[t] as number) * (1 - (all[t] as number));
    }
    for (let t = 0; t < none.length; t++) byYear[t] = (byYear[t] as number) * (1 - (none[t] as number));
  }
  for (let t = 0; t < byYear.length; t++) byYear[t] = Math.max(odds.leak, byYear[t] as number);
  return { byYear, claims, assumes, shapes };
}

/** From its own dates alone: 1 where nothing is known, the leak outside its possible years. */
function ofItself({ slopes, endIsPhysical, possible }: DatedTerm, grid: Grid, odds: CurveOdds): Float64Array {
  const values = curve(slopes, grid, { leak: odds.leak, survival: endIsPhysical ? 0 : odds.lateSurvival });
  let span = 0;
  for (let t = 0; t < values.length; t++) {
    while (span < possible.length && (possible[span]?.[1] as number) < grid.from + t) span++;
    const isPossible = span < possible.length && (possible[span]?.[0] as number) <= grid.from + t;
    // A copyist works after the old habit where he can; what did not exist yet he cannot have.
    values[t] = isPossible ? odds.copied + (1 - odds.copied) * (values[t] as number) : odds.leak;
  }
  return values;
}

function multiply(values: Float64Array, by: Float64Array): void {
  for (let t = 0; t < values.length; t++) values[t] = (values[t] as number) * (by[t] as number);
}
