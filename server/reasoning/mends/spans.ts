import { complement, meet, type Span, type Year, type Years, yearsBetween } from "../../domain/years.ts";

/**
 * The years up to the examination, cut wherever one of these sets begins or ends: within a span nothing changes. Ascending, without
 * a gap.
 */
export function spansOf(sets: readonly Years[], examined: Year): readonly Span[] {
  const starts = new Set<Year>();
  for (const years of sets)
    for (const [first, last] of [...years, ...complement(years)]) {
      if (Number.isFinite(first)) starts.add(first);
      if (Number.isFinite(last)) starts.add(last + 1);
    }
  const sorted = [...starts].filter((year) => year <= examined).sort((a, b) => a - b);
  return [Number.NEGATIVE_INFINITY, ...sorted].map((first, i) => [first, (sorted[i] ?? examined + 1) - 1]);
}

/** For each span, whether the years hold it. */
export function fitsIn(years: Years, spans: readonly Span[]): Uint8Array {
  const fits = new Uint8Array(spans.length);
  let at = 0;
  for (const [i, [first, last]] of spans.entries()) {
    while (at < years.length && (years[at] as Span)[1] < first) at++;
    const [from, until] = years[at] ?? [1, 0];
    if (from <= first && last <= until) fits[i] = 1;
  }
  return fits;
}

/** The years of a range that are not after the examination. */
export const upTo = (range: Years, examined: Year): Years =>
  meet(range, yearsBetween(Number.NEGATIVE_INFINITY, examined));

/** Which of the spans a year lies in. */
export function spanAt(spans: readonly Span[], year: Year): number {
  let [low, high] = [0, spans.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((spans[middle] as Span)[0] <= year) low = middle;
    else high = middle - 1;
  }
  return low;
}
