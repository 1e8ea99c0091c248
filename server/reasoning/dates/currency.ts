import type { ClaimId, TermId } from "../../domain/ids.ts";
import type { Dates } from "../../domain/weighing/dates.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import { ALL_YEARS, meet, type Years } from "../../domain/years.ts";
import type { Bound } from "../bound.ts";
import type { KnownGraph } from "../known-graph.ts";
import type { View } from "../view.ts";
import { curve, type Grid } from "./curve.ts";
import { eventsOf } from "./events-of.ts";

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

/** Asks for the currency of terms in one view; what was worked out is kept. */
export function currencyIn(view: View, graph: KnownGraph, grid: Grid, odds: AssumedOdds) {
  const length = grid.to - grid.from + 1;
  const known = new Map<string, Currency>();
  const passing = new Set<TermId>();
  const always: Currency = {
    ...{ byYear: new Float64Array(length).fill(1), claims: new Set(), assumes: false, shapes: new Map() },
  };

  function of(term: TermId, forced?: Forced): Currency {
    if (forced?.term === term) return { ...always, byYear: new Float64Array(length).fill(forced.to) };
    if (passing.has(term)) return always;
    const key = forced ? `${term} ${forced.term} ${forced.to}` : term;
    const before = known.get(key);
    if (before) return before;
    passing.add(term);
    const found = work(term, forced);
    passing.delete(term);
    // A value found under a cut is not kept (E9).
    if (passing.size === 0) known.set(key, found);
    return found;
  }

  function work(term: TermId, forced: Forced | undefined): Currency {
    const { bounds, lists } = view.resolve(term);
    const claims = new Set(bounds.flatMap((bound) => bound.claims));
    const shapes = new Map<TermId, Dates["assumedShapes"][number]["missing"]>();
    let assumes = bounds.some(({ by }) => by === "fallback");
    const byYear = ofItself(bounds, (missing) => shapes.set(term, missing));
    for (const { claim } of lists) {
      claims.add(claim.id);
      const none = new Float64Array(length).fill(1);
      for (const way of claim.ways) {
        const all = new Float64Array(length).fill(1);
        for (const needed of way) {
          const below = of(needed, forced);
          multiply(all, below.byYear);
          for (const id of below.claims) claims.add(id);
          for (const [shaped, missing] of below.shapes) shapes.set(shaped, missing);
          assumes ||= below.assumes;
        }
        for (let t = 0; t < length; t++) none[t] = (none[t] as number) * (1 - (all[t] as number));
      }
      for (let t = 0; t < length; t++) byYear[t] = (byYear[t] as number) * (1 - (none[t] as number));
    }
    for (let t = 0; t < length; t++) byYear[t] = Math.max(odds.leak, byYear[t] as number);
    return { byYear, claims, assumes, shapes };
  }

  /** From its own dates alone: 1 where nothing is known, the leak outside its possible years. */
  function ofItself(
    bounds: readonly Bound[],
    tellShape: (missing: Dates["assumedShapes"][number]["missing"]) => void,
  ): Float64Array {
    const events = eventsOf(bounds, graph, grid);
    if (events.missing.length > 0) tellShape(events.missing);
    const survival = events.endIsPhysical ? 0 : odds.lateSurvival;
    const values = curve(events, grid, { leak: odds.leak, survival });
    const possible = bounds
      .filter(({ hardness, claims }) => hardness === "physical" || claims.some(isRegional))
      .reduce<Years>((years, { outer }) => meet(years, outer), ALL_YEARS);
    let span = 0;
    // A copyist works after the old habit where he can; what did not exist yet he cannot have.
    for (let t = 0; t < length; t++) values[t] = odds.copied + (1 - odds.copied) * (values[t] as number);
    for (let t = 0; t < length; t++) {
      while (span < possible.length && (possible[span]?.[1] as number) < grid.from + t) span++;
      if (span === possible.length || (possible[span]?.[0] as number) > grid.from + t) values[t] = odds.leak;
    }
    return values;
  }

  const isRegional = (claim: ClaimId): boolean =>
    ["confined to", "not found in"].includes(graph.claimOf(claim).relation);
  return of;
}

function multiply(values: Float64Array, by: Float64Array): void {
  for (let t = 0; t < values.length; t++) values[t] = (values[t] as number) * (by[t] as number);
}
