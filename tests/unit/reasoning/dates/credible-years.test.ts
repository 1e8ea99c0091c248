import { describe, expect, it } from "vitest";
import { credibleYears, yearOdds } from "#server/reasoning/dates/credible-years.ts";

describe("[B10] credible years", () => {
  it("are the fewest that hold 95 %", () => {
    expect(credibleYears(Float64Array.from([0.02, 0.5, 0.46, 0.02]), 1700)).toEqual({
      years: [[1701, 1702]],
      mass: 0.96,
    });
  });

  it("take ties whole, rounding aside, or would be chosen at random", () => {
    const even = new Float64Array(100).fill(0.01);
    expect(credibleYears(even, 1700)).toEqual({ years: [[1700, 1799]], mass: 1 });
    const nearly = even.map((p, t) => p * (1 + (t % 3) * 1e-12));
    expect(credibleYears(nearly, 1700).years).toEqual([[1700, 1799]]);
  });

  it("are a union of spans where they fall apart, and leave out years that cannot be", () => {
    const odds = Float64Array.from([0.3, 0.3, 0, 0, 0.4]);
    expect(credibleYears(odds, 1700)).toEqual({
      years: [
        [1700, 1701],
        [1704, 1704],
      ],
      mass: 1,
    });
  });

  it("are one year if that is certain", () => {
    expect(credibleYears(Float64Array.from([0, 1, 0]), 1700).years).toEqual([[1701, 1701]]);
  });
});

describe("[B9] the years as they are told", () => {
  it("are steps of five that add up, the last cut short", () => {
    const { from, step, odds, mode, mean } = yearOdds(new Float64Array(12).fill(1 / 12), 1700);
    expect({ from, step, mode, mean }).toEqual({ from: 1700, step: 5, mode: 1700, mean: 1705.5 });
    expect(odds).toEqual([0.416667, 0.416667, 0.166667]);
  });
});
