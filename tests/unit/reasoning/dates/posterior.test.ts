import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import type { StateOdds } from "#server/domain/weighing/odds.ts";
import type { Group, Model } from "#server/reasoning/dates/model.ts";
import { statesOf, weighModel } from "#server/reasoning/dates/posterior.ts";

const FROM = 1700;
const TO = 1899;

const uniform = (from: number, to: number) => new Float64Array(to - from + 1).fill(1 / (to - from + 1));
const factor = (
  name: string,
  years: readonly [number, number],
  inside: number,
  outside: number,
  grid = [FROM, TO],
) => {
  const [from, to] = grid as [number, number];
  return {
    observations: [id<"observation">(name)],
    byYear: Float64Array.from({ length: to - from + 1 }, (_, i) =>
      from + i >= years[0] && from + i <= years[1] ? inside : outside,
    ),
  };
};
const odds = (original: number, later: number, reused: number): StateOdds => ({
  ...{ original, later, reused },
  reworked: 0,
});
const group = (name: string, prior: StateOdds, factors: Group["factors"]): Group => ({
  ...{ parts: [id<"part">(name)], prior, factors, signs: [] },
});
const modelOf = (groups: readonly Group[], prior = uniform(FROM, TO), from = FROM, to = TO): Model => ({
  ...{ from, to, prior, laterWork: 0.3, reuseYears: 40 },
  cases: [{ place: { region: null, elsewhere: false }, weight: 1, given: new Map(), groups }],
  ...{ assumedShapes: [], tried: [], takenApart: [], used: [] },
});
const between = (years: Float64Array, from: number, to: number) =>
  years.slice(from - FROM, to - FROM + 1).reduce((sum, p) => sum + p, 0);

/** Worked cases P1, P3 and E1: by hand, and by a separate enumeration of all years and states. */
describe("the weighing of years and states", () => {
  it("P1: one certain part and one feature", () => {
    const { years } = weighModel(
      modelOf([group("p", odds(1, 0, 0), [factor("f", [1800, 1899], 0.98, 0.02)])]),
    );
    expect(between(years, 1800, 1899)).toBeCloseTo(0.98, 12);
  });

  it("P3: a drawer on a piece of one known year", () => {
    const prior = new Float64Array(2000 - 1500).fill(0);
    prior[260] = 1;
    const late = factor("f", [1830, 1999], 0.9, 0.01, [1500, 1999]);
    const model = modelOf([group("drawer", odds(0.8, 0.17, 0.03), [late])], prior, 1500, 1999);
    const states = statesOf(weighModel(model), 0);
    expect(states.original).toBeCloseTo(0.068016, 6);
    expect(states.later).toBeCloseTo(0.929433, 6);
    expect(states.reused).toBeCloseTo(0.002551, 6);
  });

  it("E1: carcase, drawers and brasses together", () => {
    const posterior = weighModel(
      modelOf([
        group("carcase", odds(0.95, 0.03, 0.02), [factor("pit", [1700, 1800], 0.9, 0.05)]),
        group("drawers", odds(0.8, 0.17, 0.03), [
          factor("arc", [1815, 1899], 0.9, 0.02),
          factor("dovetail", [1700, 1830], 0.9, 0.2),
        ]),
        group("brasses", odds(0.6, 0.37, 0.03), [factor("oval", [1780, 1800], 0.9, 0.03)]),
      ]),
    );
    expect(posterior.logEvidence / Math.LN10).toBeCloseTo(-2.359041, 6);
    expect(between(posterior.years, 1765, 1775)).toBeCloseTo(0.045129, 6);
    const mean = posterior.years.reduce((sum, p, i) => sum + p * (FROM + i), 0);
    expect(mean).toBeCloseTo(1780.624, 3);
    const expected = [
      [0.965419, 0.00746, 0.027121],
      [0.309372, 0.679593, 0.011035],
      [0.721055, 0.258414, 0.02053],
    ];
    for (const [i, values] of expected.entries()) {
      const { original, later, reused } = statesOf(posterior, i);
      for (const [j, value] of [original, later, reused].entries())
        expect(value).toBeCloseTo(values[j] as number, 6);
    }
  });
});
