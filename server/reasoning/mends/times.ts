import { isEmpty, meet, type Span, type Year, type Years } from "../../domain/years.ts";
import type { Puzzle } from "./puzzle.ts";
import { spanAt } from "./spans.ts";
import type { Variant } from "./unit.ts";

/**
 * Years of making to try out of a range: one for each span within it that no neighbour betters in everything. With parts that are
 * separate, every span, in a year that leaves some of it before and after.
 */
export function timesIn({ spans, units, pairs }: Puzzle, range: Years): readonly Year[] {
  const within = spans.flatMap((years, span) => (isEmpty(meet([years], range)) ? [] : [span]));
  if (pairs.length > 0) return meet(spans, range).flatMap(yearsWithin);
  const bounded = units.flatMap(({ variants }) => variants).filter(({ sightings }) => sightings.length > 0);
  const at = bounded.map((variant) => spans.map(([, last]) => spanAt(variant.spans, last)));
  /** Whether all that fits one span fits the other too. */
  const isBetter = (one: number, other: number): boolean =>
    bounded.every((variant, i) => fitsAll(variant, at[i]?.[one] ?? 0, at[i]?.[other] ?? 0));
  return within
    .filter(
      (span, i) =>
        !(within[i - 1] === span - 1 && isBetter(span, span - 1)) &&
        !(within[i + 1] === span + 1 && isBetter(span, span + 1) && !isBetter(span + 1, span)),
    )
    .map((span) => yearsWithin(spans[span] as Span)[0] as Year);
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
