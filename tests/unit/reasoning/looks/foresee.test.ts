import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import type { Model } from "#server/reasoning/dates/model.ts";
import { type Posterior, weighModel } from "#server/reasoning/dates/posterior.ts";
import { bitsOf } from "#server/reasoning/looks/bits-of.ts";
import { foresee } from "#server/reasoning/looks/foresee.ts";
import { entropy, expectedBits } from "#server/reasoning/looks/information.ts";
import { outlookOf } from "#server/reasoning/looks/outlook.ts";

const ALWAYS_ORIGINAL = { original: 1, later: 0, reused: 0, reworked: 0 };
const NOTHING = { original: 1, later: 1, reused: 1, reworked: 1 };
const YEARS = 200;

const model: Model = {
  ...{ from: 1700, to: 1899, laterWork: 0.3, reuseYears: 40 },
  prior: new Float64Array(YEARS).fill(1 / YEARS),
  cases: [
    {
      ...{ place: { region: null, elsewhere: false }, weight: 1, given: new Map() },
      groups: [{ parts: [id<"part">("p")], prior: ALWAYS_ORIGINAL, factors: [], signs: [] }],
    },
  ],
  ...{ assumedShapes: [], tried: [], takenApart: [], used: [] },
};

const CLAIMED = [1800, 1899] as const;
const outlooksOf = ({ cases }: Posterior, byYear: Float64Array) =>
  cases.flatMap(({ mixtures: [mixture], years }) =>
    mixture
      ? [{ outlook: outlookOf(mixture, years, model, CLAIMED), foreseen: { byYear, byState: NOTHING } }]
      : [],
  );

describe("[N5] what a look is worth", () => {
  it("P1: a feature that parts the centuries tells 1 - H(.02) bit beforehand", () => {
    const posterior = weighModel(model);
    const feature = Float64Array.from({ length: YEARS }, (_, t) => (1700 + t >= 1800 ? 0.98 : 0.02));
    const before = foresee(outlooksOf(posterior, new Float64Array(YEARS).fill(1)));
    const seen = foresee(outlooksOf(posterior, feature));
    expect(seen.seen).toBeCloseTo(0.5, 12);
    expect(seen.claimed / seen.seen).toBeCloseTo(0.98, 12);
    expect(bitsOf(before, seen, 1).bits).toBeCloseTo(0.8586, 4);
    expect(bitsOf(before, seen, 1).bits).toBeCloseTo(1 - entropy([0.02, 0.98]), 10);
  });

  it("a coin that is always seen alike tells nothing, one that gives it away tells all", () => {
    expect(expectedBits([0.5, 0.5], [0.25, 0.25], 1)).toBeCloseTo(0, 12);
    expect(expectedBits([0.5, 0.5], [0.5, 0], 1)).toBeCloseTo(1, 12);
    expect(expectedBits([0.5, 0.5], [0.5, 0], 0)).toBe(0);
  });

  it("nothing is to be learned where nothing is open", () => {
    expect(expectedBits([1, 0], [0.3, 0], 1)).toBe(0);
  });
});
