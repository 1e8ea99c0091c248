import fc from "fast-check";
import { canonicalYears, type Span, type Year, type Years } from "#server/domain/years.ts";

/** Years near enough that spans touch, overlap and leave gaps of one year. */
export const anyYear: fc.Arbitrary<Year> = fc.integer({ min: 1740, max: 1770 });

/** Ends may be open; one in eight spans is the wrong way round and so empty. */
export const anySpan: fc.Arbitrary<Span> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.tuple(anyYear, fc.nat(12)).map(([first, length]): Span => [first, first + length]),
  },
  { weight: 1, arbitrary: anyYear.map((last): Span => [Number.NEGATIVE_INFINITY, last]) },
  { weight: 1, arbitrary: anyYear.map((first): Span => [first, Number.POSITIVE_INFINITY]) },
  { weight: 1, arbitrary: anyYear.map((year): Span => [year + 1, year]) },
);

/** Sets of years of up to five spans, the empty set and all years among them. */
export const anyYears: fc.Arbitrary<Years> = fc.array(anySpan, { maxLength: 5 }).map(canonicalYears);

/** Every year in which two sets of `anyYears` can differ, and one on each side. */
export const YEARS_THAT_MATTER: readonly Year[] = Array.from({ length: 46 }, (_, i) => 1739 + i);
