import { meet, type Span, type Year, type Years } from "../../domain/years.ts";
import type { Puzzle } from "./puzzle.ts";
import { spanAt } from "./spans.ts";
import type { Variant } from "./unit.ts";

/**
 * Years of making to try out of a range: one for each span within it that no neighbour betters in everything. With parts that are
 * separate, every span, in a year that leaves some of it before and after.
 */
export function timesIn({ spans, units, pairs }: Puzzle, range: Years): readonly Year[] {
  const within = meet(spans, range);
  if (pairs.length > 0) return within.flatMap(yearsWithin);
  const bounded = units.flatMap(({ variants }) => variants).filter(({ sightings }) => sightings.length > 0);
  const at = within.map(([, last]) => bounded.map((variant) => spanAt(variant.spans, last)));
  /** Whether all that fits one span fits the other too. */
  const isBetter = (one: number, other: number): boolean =>
    at[other] !== undefined &&
    bounded.every((variant, i) => fitsAll(variant, at[one]?.[i] ?? 0, at[other]?.[i] ?? 0));
  return within
    .filter((_, i) => !isBetter(i, i - 1) && !(isBetter(i, i + 1) && !isBetter(i + 1, i)))
    .map((span) => yearsWithin(span)[0] as Year);
}

const fitsAll = ({ sightings }: Variant, one: number, other: number): boolean =>
  one === other ||
  sightings.every(({ bounds }) => bounds.every(({ fits }) => fits[one] !== 1 || fits[other] === 1));

/** A year with years of the span on both sides; of a short span, the two or the one there are. */
export function yearsWithin([first, last]: Span): readonly Year[] {
  if (first === Number.NEGATIVE_INFINITY) return [last - 1];
  if (last - first >= 2) return [first + 1];
  return last === first ? [first] : [first, last];
}
