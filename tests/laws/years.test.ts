import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  ALL_YEARS,
  canonicalYears,
  complement,
  hasYear,
  isWithin,
  join,
  meet,
  NO_YEARS,
  type Years,
  yearsApart,
  yearsFromJson,
  yearsToJson,
} from "#server/domain/years.ts";
import { anySpan, anyYear, anyYears, YEARS_THAT_MATTER } from "#tests/support/any-years.ts";

type Two = (a: Years, b: Years) => Years;
const pairs: readonly [string, Two, Two, Years, Years][] = [
  ["meet", meet, join, ALL_YEARS, NO_YEARS],
  ["join", join, meet, NO_YEARS, ALL_YEARS],
];

describe.each(pairs)("[D1] %s of sets of years", (_, op, other, neutral, absorbing) => {
  const holds = (law: (a: Years, b: Years, c: Years) => void): void => {
    fc.assert(fc.property(anyYears, anyYears, anyYears, law));
  };

  it("is associative", () => {
    holds((a, b, c) => {
      expect(op(a, op(b, c))).toEqual(op(op(a, b), c));
    });
  });
  it("is commutative", () => {
    holds((a, b) => {
      expect(op(a, b)).toEqual(op(b, a));
    });
  });
  it("is idempotent", () => {
    holds((a) => {
      expect(op(a, a)).toEqual(a);
    });
  });
  it("absorbs", () => {
    holds((a, b) => {
      expect(op(a, other(a, b))).toEqual(a);
    });
  });
  it("distributes over the other", () => {
    holds((a, b, c) => {
      expect(op(a, other(b, c))).toEqual(other(op(a, b), op(a, c)));
    });
  });
  it("has a neutral and an absorbing set", () => {
    holds((a) => {
      expect(op(a, neutral)).toEqual(a);
      expect(op(a, absorbing)).toEqual(absorbing);
    });
  });
  it("turns into the other under complement", () => {
    holds((a, b) => {
      expect(complement(op(a, b))).toEqual(other(complement(a), complement(b)));
    });
  });
});

describe("[D1] sets of years", () => {
  it("complement twice is the set itself, and a set and its complement share no year and miss none", () => {
    fc.assert(
      fc.property(anyYears, (a) => {
        expect(complement(complement(a))).toEqual(a);
        expect(meet(a, complement(a))).toEqual(NO_YEARS);
        expect(join(a, complement(a))).toEqual(ALL_YEARS);
      }),
    );
  });

  it("membership agrees year by year", () => {
    fc.assert(
      fc.property(anyYears, anyYears, (a, b) => {
        for (const year of YEARS_THAT_MATTER) {
          expect(hasYear(meet(a, b), year)).toBe(hasYear(a, year) && hasYear(b, year));
          expect(hasYear(join(a, b), year)).toBe(hasYear(a, year) || hasYear(b, year));
          expect(hasYear(complement(a), year)).toBe(!hasYear(a, year));
        }
      }),
    );
  });

  it("the canonical form holds the same years, sorted, with a year free between two spans", () => {
    fc.assert(
      fc.property(fc.array(anySpan, { maxLength: 6 }), (spans) => {
        const years = canonicalYears(spans);
        for (const year of YEARS_THAT_MATTER)
          expect(hasYear(years, year)).toBe(spans.some(([first, last]) => first <= year && year <= last));
        for (const [first, last] of years) expect(first).toBeLessThanOrEqual(last);
        for (let i = 1; i < years.length; i++)
          expect(years[i]?.[0]).toBeGreaterThan((years[i - 1]?.[1] ?? 0) + 1);
        expect(canonicalYears([...spans].reverse())).toEqual(years);
      }),
    );
  });

  it("one set lies within another exactly when every year of it does", () => {
    fc.assert(
      fc.property(anyYears, anyYears, (a, b) => {
        const everyYear = YEARS_THAT_MATTER.every((year) => !hasYear(a, year) || hasYear(b, year));
        const openEnds = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
        const everyEnd = openEnds.every((end) => !hasYear(a, end) || hasYear(b, end));
        expect(isWithin(a, b)).toBe(everyYear && everyEnd);
      }),
    );
  });

  it("years apart is the least distance of two years, nought where they share one", () => {
    const near = fc.array(
      fc.tuple(anyYear, fc.nat(6)).map(([first, n]): [number, number] => [first, first + n]),
      {
        minLength: 1,
        maxLength: 3,
      },
    );
    fc.assert(
      fc.property(near, near, (spansA, spansB) => {
        const [a, b] = [canonicalYears(spansA), canonicalYears(spansB)];
        const all = Array.from({ length: 60 }, (_, i) => 1730 + i);
        const distances = all
          .filter((year) => hasYear(a, year))
          .flatMap((x) => all.filter((year) => hasYear(b, year)).map((y) => Math.abs(x - y)));
        expect(yearsApart(a, b)).toBe(Math.min(...distances));
        expect(yearsApart(b, a)).toBe(yearsApart(a, b));
      }),
    );
    expect(yearsApart([[1790, Number.POSITIVE_INFINITY]], [[1760, 1775]])).toBe(15);
    expect(yearsApart(NO_YEARS, ALL_YEARS)).toBeUndefined();
  });

  it("survives JSON, which has no infinity", () => {
    fc.assert(
      fc.property(anyYears, (a) => {
        expect(yearsFromJson(JSON.parse(JSON.stringify(yearsToJson(a))))).toEqual(a);
      }),
    );
  });
});
