import { describe, expect, it } from "vitest";
import { curve, slopesOf } from "#server/reasoning/dates/curve.ts";

describe("the curve of a habit", () => {
  it("goes through the worked values", () => {
    const grid = { from: 1690, to: 1850 };
    const slopes = slopesOf(
      {
        rises: [
          [
            [1700, 1710],
            [1720, 1740],
          ],
        ],
        falls: [
          [
            [1760, 1790],
            [1790, 1840],
          ],
        ],
      },
      grid,
    );
    const values = curve(slopes, grid, { leak: 0.005, survival: 0.02 });
    const expected: readonly (readonly [number, number])[] = [
      [1690, 0.005],
      [1705, 0.04901],
      [1715, 0.41716],
      [1725, 0.80869],
      [1735, 0.98177],
      [1745, 1],
      [1770, 0.9668],
      [1790, 0.61089],
      [1800, 0.3537],
      [1820, 0.09476],
      [1850, 0.0249],
    ];
    for (const [year, value] of expected) expect(values[year - 1690]).toBeCloseTo(value, 5);
  });
});
