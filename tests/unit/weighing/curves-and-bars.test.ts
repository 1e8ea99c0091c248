import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import type { YearOdds } from "#server/domain/weighing/dates.ts";
import type { Weights } from "#server/domain/weighing/weights.ts";
import { makeYearAxis } from "#web/shared/years/year-axis.ts";
import { curvePath, isUndetermined } from "#web/weighing/curve-path.ts";
import { weightBars } from "#web/weighing/weight-bars.ts";

const curve = (from: number, odds: readonly number[], years: YearOdds["credible"]["years"]): YearOdds => ({
  ...{ from, step: 1, odds, mode: from, mean: from },
  credible: { years, mass: 0.95 },
});
/** Points of a path as pairs. */
const pointsOf = (path: string) =>
  [...path.matchAll(/[ML]([\d.]+) ([\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);

describe("[Y7] a curve of years", () => {
  const axis = makeYearAxis(1700, 1800);

  it("reaches the top where it is likeliest, and the ground where a year cannot be", () => {
    const odds = Array.from({ length: 101 }, (_, n) => (n < 50 ? 0 : n === 75 ? 0.04 : 0.02));
    const points = pointsOf(curvePath(curve(1700, odds, [[1750, 1800]]), axis));
    expect(points[0]).toEqual([0, 100]);
    expect(points.at(-1)).toEqual([100, 100]);
    expect(points.find(([x]) => x === 75)?.[1]).toBe(50);
    expect(points.some(([x, y]) => x === 75 && y === 0)).toBe(true);
    expect(points.some(([x, y]) => x !== undefined && x < 50 && y !== undefined && y < 100)).toBe(false);
  });

  it("stays low within the axis where the likeliest year lies beyond it", () => {
    const odds = Array.from({ length: 200 }, (_, n) => (n === 150 ? 0.5 : 0.5 / 199));
    const heights = pointsOf(curvePath(curve(1700, odds, [[1850, 1850]]), axis)).map(([, y]) => y ?? 0);
    expect(Math.min(...heights)).toBeGreaterThan(99);
  });

  it("is undetermined over more than 150 years in all, however they lie", () => {
    expect(isUndetermined(curve(1700, [1], [[1700, 1849]]))).toBe(false);
    expect(
      isUndetermined(
        curve(
          1700,
          [1],
          [
            [1700, 1799],
            [1850, 1900],
          ],
        ),
      ),
    ).toBe(true);
  });

  it("draws nothing of no odds", () => {
    expect(curvePath(curve(1700, [0, 0], []), axis)).toBe("");
  });
});

describe("[Y9] the bars of the weights", () => {
  const step = (
    name: string,
    chain: number | null,
    leaveOneOut = chain,
    linked = 1,
  ): Weights["steps"][number] => ({
    observations: Array.from({ length: linked }, (_, n) => id<"observation">(`${name}${n}`)),
    ...(linked > 1 ? { linkedBy: "tool" as const } : {}),
    ...{ leaveOneOut, chain, word: "slight" },
  });
  const said = (weights: Weights) =>
    weights.steps.map(({ observations }) => ({
      observations,
      says: "",
      seen: observations.join(),
      brief: "",
    }));

  it("begin where the one before ends, and add up", () => {
    const weights = {
      total: -0.28,
      steps: [step("a", -0.6), step("b", 0.9), step("c", -0.58), step("d", 0)],
    };
    const { told, slight, least, greatest } = weightBars(weights, said(weights));
    expect(told.map(({ from, to }) => [from, to].map((each) => Number(each.toFixed(2))))).toEqual([
      [0, -0.6],
      [-0.6, 0.3],
      [0.3, -0.28],
    ]);
    expect(slight.map(({ seen }) => seen)).toEqual(["d0"]);
    expect((slight.at(-1)?.to ?? 0) - weights.total).toBeCloseTo(0, 12);
    expect([least, greatest].map((each) => Number(each.toFixed(2)))).toEqual([-0.6, 0.3]);
  });

  it("tell what is linked as one, and what is beyond the model without a length", () => {
    const weights = { total: null, steps: [step("a", null), step("b", 0.4, 0.4, 3)] };
    const { told } = weightBars(weights, said(weights));
    expect(told[0]).toMatchObject({ step: null, from: 0, to: 0 });
    expect(told[1]).toMatchObject({ seen: "b0,b1,b2", linkedBy: "traces of one tool, told as one" });
  });

  it("tell a thing that says nothing alone but moves the sum, and one that does the other way", () => {
    const weights = { total: 0.22, steps: [step("a", 0.02, 0.3), step("b", 0.2, 0)] };
    expect(weightBars(weights, said(weights)).told.map(({ seen }) => seen)).toEqual(["a0", "b0"]);
  });
});
