import { describe, expect, it } from "vitest";
import { datePrior } from "#server/reasoning/dates/date-prior.ts";
import { shareWithin } from "#server/reasoning/dates/share-within.ts";

const GRID = { from: 1700, to: 1799 };
const share = (prior: Float64Array, first: number, last: number) =>
  shareWithin(prior, GRID.from, [first, last]);

describe("[B11] the prior of the year of making", () => {
  it("is all years alike, and knows nothing of the claim", () => {
    expect([...new Set(datePrior("uniform", GRID, [1760, 1769]))]).toEqual([0.01]);
  });

  it("as claimed, if that is chosen, has half of it on the claimed years beside their share of the rest", () => {
    const prior = datePrior("as claimed", GRID, [1760, 1769]);
    expect(share(prior, 1700, 1799)).toBeCloseTo(1, 12);
    expect(share(prior, 1760, 1769)).toBeCloseTo(0.5 + 0.5 * 0.1, 12);
  });

  it("as claimed of years beyond the grid is all years alike", () => {
    expect([...datePrior("as claimed", GRID, [1850, 1860])]).toEqual([...datePrior("uniform", GRID, [1, 2])]);
  });

  it("as claimed of years half within it counts those", () => {
    const prior = datePrior("as claimed", GRID, [1790, 1810]);
    expect(share(prior, 1790, 1799)).toBeCloseTo(0.55, 12);
  });

  it("by production has the documented pieces of each decade, and one more", () => {
    const prior = datePrior("production", GRID, [1760, 1769], new Map([[1750, 29]]));
    expect(share(prior, 1700, 1799)).toBeCloseTo(1, 12);
    expect(share(prior, 1750, 1759) / share(prior, 1740, 1749)).toBeCloseTo(30, 10);
    expect([...datePrior("production", GRID, [1760, 1769])]).toEqual([...datePrior("uniform", GRID, [1, 2])]);
  });
});
