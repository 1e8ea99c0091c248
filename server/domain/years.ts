/** A calendar year of the common era. Infinity stands for an end that nothing bounds. */
export type Year = number;
/** First and last year, both included; `first <= last`. */
export type Span = readonly [first: Year, last: Year];
/** Sorted spans of whole years with at least one year between two of them: one form for one set. */
export type Years = readonly Span[];

export const NO_YEARS: Years = [];
export const ALL_YEARS: Years = [[Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]];

/** Years from `first` to `last`; none if `first > last`. */
export const yearsBetween = (first: Year, last: Year): Years => (first > last ? NO_YEARS : [[first, last]]);

/** Brings any list of spans to canonical form: sorted, overlapping or touching spans joined, empty ones dropped. */
export function canonicalYears(spans: readonly Span[]): Years {
  const sorted = spans.filter(([first, last]) => first <= last).sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const joined: [Year, Year][] = [];
  for (const [first, last] of sorted) {
    const end = joined.at(-1);
    if (end && first <= end[1] + 1) end[1] = Math.max(end[1], last);
    else joined.push([first, last]);
  }
  return joined;
}

/** Years in both. */
export function meet(a: Years, b: Years): Years {
  const both: Span[] = [];
  for (let i = 0, j = 0; i < a.length && j < b.length; ) {
    const [a0, a1] = a[i] as Span;
    const [b0, b1] = b[j] as Span;
    const first = Math.max(a0, b0);
    const last = Math.min(a1, b1);
    if (first <= last) both.push([first, last]);
    if (a1 < b1) i++;
    else j++;
  }
  return both;
}

/** Years in either. */
export function join(a: Years, b: Years): Years {
  if (a.length === 0) return b;
  if (b.length === 0) return a;
  const joined: [Year, Year][] = [];
  let end: [Year, Year] | undefined;
  for (let i = 0, j = 0; i < a.length || j < b.length; ) {
    const [x, y] = [a[i], b[j]];
    const isFirst = y === undefined || (x !== undefined && x[0] <= y[0]);
    const [first, last] = (isFirst ? x : y) as Span;
    if (isFirst) i++;
    else j++;
    if (end && first <= end[1] + 1) end[1] = Math.max(end[1], last);
    else {
      end = [first, last];
      joined.push(end);
    }
  }
  return joined;
}

/** Years not in `a`. */
export function complement(a: Years): Years {
  const gaps: Span[] = [];
  let from = Number.NEGATIVE_INFINITY;
  for (const [first, last] of a) {
    if (from < first) gaps.push([from, first - 1]);
    from = last + 1;
  }
  if (from < Number.POSITIVE_INFINITY) gaps.push([from, Number.POSITIVE_INFINITY]);
  return gaps;
}

export const isEmpty = (a: Years): boolean => a.length === 0;
export const hasYear = (a: Years, year: Year): boolean =>
  a.some(([first, last]) => first <= year && year <= last);
export const sameYears = (a: Years, b: Years): boolean =>
  a.length === b.length && a.every(([first, last], i) => first === b[i]?.[0] && last === b[i]?.[1]);
export const isWithin = (inner: Years, outer: Years): boolean => sameYears(meet(inner, outer), inner);
export const isAllYears = (a: Years): boolean => sameYears(a, ALL_YEARS);

/** Years between the nearest two of `a` and `b` (1790 and 1775: 15); 0 where they meet; `undefined` if one is empty. */
export function yearsApart(a: Years, b: Years): number | undefined {
  if (isEmpty(a) || isEmpty(b)) return undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const [a0, a1] of a) for (const [b0, b1] of b) least = Math.min(least, Math.max(0, a0 - b1, b0 - a1));
  return least;
}

/** JSON form of years: an infinite end is null. */
export type YearsJson = readonly (readonly [Year | null, Year | null])[];
const finite = (year: Year): Year | null => (Number.isFinite(year) ? year : null);
export const yearsToJson = (a: Years): YearsJson => a.map(([first, last]) => [finite(first), finite(last)]);
export const yearsFromJson = (a: YearsJson): Years =>
  a.map(([first, last]) => [first ?? Number.NEGATIVE_INFINITY, last ?? Number.POSITIVE_INFINITY]);
