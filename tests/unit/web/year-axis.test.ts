import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { axisAround, makeYearAxis } from "#web/shared/years/year-axis.ts";

const anyYear = fc.integer({ min: 1400, max: 2026 });

describe("[P7] an axis of years", () => {
  it("has ticks in whole steps from its first to its last year", () => {
    expect(makeYearAxis(1642, 1893)).toMatchObject({ first: 1600, last: 1900 });
    expect(makeYearAxis(1642, 1893).ticks).toEqual([1600, 1650, 1700, 1750, 1800, 1850, 1900]);
    expect(makeYearAxis(1761, 1789).ticks).toEqual([1760, 1770, 1780, 1790]);
    expect(makeYearAxis(1750, 1750).ticks).toEqual([1750, 1760]);
  });

  it("places its first year at 0, its last at 100, and keeps the order of all between", () => {
    fc.assert(
      fc.property(anyYear, anyYear, anyYear, anyYear, (a, b, x, y) => {
        const axis = makeYearAxis(Math.min(a, b), Math.max(a, b));
        expect(axis.at(axis.first)).toBe(0);
        expect(axis.at(axis.last)).toBe(100);
        expect(Math.sign(axis.at(x) - axis.at(y)) * Math.sign(x - y)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it("holds a year beyond it, or one that nothing bounds, at the edge", () => {
    const axis = makeYearAxis(1700, 1800);
    expect(axis.at(1500)).toBe(0);
    expect(axis.at(2000)).toBe(100);
    expect(axis.at(null, "first")).toBe(0);
    expect(axis.at(null, "last")).toBe(100);
  });

  it("shows every stated year of what is drawn on it", () => {
    fc.assert(
      fc.property(fc.array(fc.option(anyYear), { minLength: 1 }), (years) => {
        const axis = axisAround(years);
        for (const year of years) if (year !== null) expect(year).toBeGreaterThan(axis.first);
        for (const year of years) if (year !== null) expect(year).toBeLessThan(axis.last);
      }),
    );
  });
});
