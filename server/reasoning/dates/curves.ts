import type { TermId } from "../../domain/ids.ts";
import { isAllYears } from "../../domain/years.ts";
import type { Bound } from "../bound.ts";
import type { KnownGraph } from "../known-graph.ts";
import type { View } from "../view.ts";
import {
  type Currency,
  type CurrencyOf,
  type CurveOdds,
  currencyFrom,
  type Forced,
  type StandingTerm,
  steady,
} from "./currency.ts";
import type { Grid } from "./curve.ts";
import { type DatedTerm, datedTerm } from "./dated-term.ts";
import { numbering } from "./numbering.ts";

/**
 * The curves of one graph and grid. Each is worked out once for all places where a term stands alike, and for all odds that agree in
 * what curves depend on; what is the same is the same object.
 */
export interface Curves {
  readonly grid: Grid;
  readonly at: (view: View, odds: CurveOdds) => CurrencyOf;
}

/** A term as it stands in one view, with a number that it has in all views where it stands alike, what it requires aside. */
interface Stand extends StandingTerm {
  readonly number: number;
}

interface Whole {
  readonly key: string;
  /** Something in it went out of use; came or went; is bounded at all. */
  readonly falls: boolean;
  readonly slopes: boolean;
  readonly ends: boolean;
}

export function curvesOf(graph: KnownGraph, grid: Grid): Curves {
  const numberOf = numbering<string>();
  const dated = new Map<number, DatedTerm>();
  const stands = new Map<View, Map<TermId, Stand>>();
  const wholes = new Map<View, Map<TermId, Whole>>();
  const known = new Map<string, Currency>();
  const knownAtTop = new Map<string, Currency>();
  const always = steady(1, grid);
  const never = steady(0, grid);

  function standIn(view: View, term: TermId): Stand {
    const terms = stands.get(view) ?? new Map<TermId, Stand>();
    stands.set(view, terms);
    const before = terms.get(term);
    if (before) return before;
    const { bounds, lists } = view.resolve(term);
    const number = numberOf([term, ...bounds.map(markOf), ...lists.map(({ claim }) => claim.id)].join("\n"));
    const read = dated.get(number) ?? datedTerm({ bounds }, graph, grid);
    dated.set(number, read);
    const stand: Stand = { number, dated: read, lists };
    terms.set(term, stand);
    return stand;
  }

  /** How a term stands in a view with all that it requires, and which odds its curve depends on there. */
  function wholeOf(view: View, term: TermId): Whole {
    const terms = wholes.get(view) ?? new Map<TermId, Whole>();
    wholes.set(view, terms);
    const before = terms.get(term);
    if (before) return before;
    const stands = view.reached(term).map((below) => standIn(view, below.term));
    const falls = stands.some((stand) => stand.dated.slopes.fall !== undefined);
    const slopes = falls || stands.some((stand) => stand.dated.slopes.rise !== undefined);
    const ends = slopes || stands.some((stand) => !isAllYears(stand.dated.possible));
    const whole = { key: stands.map(({ number }) => number).join(" "), falls, slopes, ends };
    terms.set(term, whole);
    return whole;
  }

  function currencyIn(view: View, odds: CurveOdds): CurrencyOf {
    const { leak, copied, lateSurvival } = odds;
    const passing = new Set<TermId>();
    const keys = new Map<string, string>();
    let isCut = false;

    /** Names all that the currency depends on. */
    function keyOf(term: TermId, forced: Forced | undefined): string {
      const short = forced ? `${term} ${forced.term} ${forced.to}` : term;
      const before = keys.get(short);
      if (before !== undefined) return before;
      const whole = wholeOf(view, term);
      const counting = [
        whole.ends || forced ? leak : "",
        whole.slopes ? copied : "",
        whole.falls ? lateSurvival : "",
      ];
      const key = [short, ...counting, whole.key].join(" ");
      keys.set(short, key);
      return key;
    }

    function currency(term: TermId, forced?: Forced): Currency {
      if (forced?.term === term) return forced.to === 1 ? always : never;
      if (passing.has(term)) {
        isCut = true;
        return always;
      }
      const key = keyOf(term, forced);
      const before = known.get(key) ?? (passing.size === 0 ? knownAtTop.get(key) : undefined);
      if (before) return before;
      const wasCut = isCut;
      isCut = false;
      passing.add(term);
      const stand = standIn(view, term);
      const found = currencyFrom(term, stand, (needed) => currency(needed, forced), grid, odds);
      passing.delete(term);
      // A value found under a cut holds where it was asked for, and nowhere below another term (E9).
      if (!isCut) known.set(key, found);
      else if (passing.size === 0) knownAtTop.set(key, found);
      isCut ||= wasCut;
      return found;
    }
    return currency;
  }

  return { grid, at: currencyIn };
}

/** All that a bound says. */
const markOf = ({ by, hardness, claims, outer, inner }: Bound): string =>
  [by, hardness, claims, outer, inner].join(" ");
