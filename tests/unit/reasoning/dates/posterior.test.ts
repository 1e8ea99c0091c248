import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import type { StateOdds } from "#server/domain/weighing/odds.ts";
import { yearOdds } from "#server/reasoning/dates/credible-years.ts";
import { logOdds } from "#server/reasoning/dates/log-odds.ts";
import { mixer } from "#server/reasoning/dates/mixture.ts";
import { statesOf, weighModel } from "#server/reasoning/dates/posterior.ts";
import { readDates } from "#server/reasoning/dates/read-dates.ts";
import { reducer } from "#server/reasoning/dates/reducer.ts";
import { shareWithin } from "#server/reasoning/dates/share-within.ts";
import { contaminated } from "#server/reasoning/sensitivity/contaminated.ts";
import { chainOf } from "#server/reasoning/weights/chain-of.ts";
import { readWeights } from "#server/reasoning/weights/read-weights.ts";
import {
  CLAIMED,
  e1,
  FROM,
  factor,
  group,
  modelOf,
  oneSource,
  oneTool,
  states,
  TO,
} from "#tests/support/worked-models.ts";

const between = (years: Float64Array, from: number, to: number) => shareWithin(years, FROM, [from, to]);

function expectStates({ original, later, reused }: StateOdds, wanted: readonly [number, number, number]) {
  for (const [i, value] of [original, later, reused].entries())
    expect(value).toBeCloseTo(wanted[i] as number, 6);
}

describe("[B1] [B10] one certain part and one feature (P1)", () => {
  const { years } = weighModel(
    modelOf([[1, [group("p", states(1, 0, 0), [factor("f", [1800, TO], 0.98, 0.02)])]]]),
  );

  it("is as probable as the feature is telling", () => {
    expect(between(years, 1800, TO)).toBeCloseTo(0.98, 12);
    expect(Math.log10(0.98 / 0.02)).toBeCloseTo(1.69, 3);
    expect(logOdds(years, FROM, [1800, TO])).toBeCloseTo(Math.log10(49), 12);
  });

  it("is of the century, with its ties taken whole", () => {
    expect(yearOdds(years, FROM).credible).toEqual({ years: [[1800, 1899]], mass: 0.98 });
  });
});

describe("[B1] a drawer on a piece of one known year (P3)", () => {
  it("has the states worked by hand", () => {
    const prior = new Float64Array(2000 - 1500).fill(0);
    prior[260] = 1;
    const late = factor("f", [1830, 1999], 0.9, 0.01, [1500, 1999]);
    const model = modelOf([[1, [group("drawer", states(0.8, 0.17, 0.03), [late])]]], prior, 1500);
    expectStates(statesOf(weighModel(model), 0), [0.068016, 0.929433, 0.002551]);
  });
});

describe("carcase, drawers and brasses together (E1)", () => {
  const posterior = weighModel(e1());
  const given = { mixer: mixer(), reduced: reducer() };

  it("[B1] [B9] has the evidence, years and states that were enumerated apart", () => {
    expect(posterior.logEvidence / Math.LN10).toBeCloseTo(-2.359041, 6);
    expect(between(posterior.model.prior, ...CLAIMED)).toBeCloseTo(0.055, 12);
    expect(between(posterior.years, ...CLAIMED)).toBeCloseTo(0.045129, 6);
    expectStates(statesOf(posterior, 0), [0.965419, 0.00746, 0.027121]);
    expectStates(statesOf(posterior, 1), [0.309372, 0.679593, 0.011035]);
    expectStates(statesOf(posterior, 2), [0.721055, 0.258414, 0.02053]);
  });

  it("[B10] has its mode, mean and credible years, a union of two spans", () => {
    const { mode, mean, credible } = yearOdds(posterior.years, FROM);
    expect(mode).toBe(1800);
    expect(mean).toBe(1780.62);
    const exact = posterior.years.reduce((sum, p, t) => sum + p * (FROM + t), 0);
    expect(exact).toBeCloseTo(1780.624, 3);
    expect(credible.years).toEqual([
      [1700, 1800],
      [1815, 1817],
    ]);
    expect(credible.mass).toBeCloseTo(0.9503, 4);
  });

  it("[B11] has the states it would have if the claim were true", () => {
    const wanted = [
      [0.971146, 0.008409, 0.020445],
      [0.29114, 0.697942, 0.010918],
      [0.218306, 0.770779, 0.010915],
    ] as const;
    const { parts, claimed } = readDates(posterior, CLAIMED, mixer());
    for (const [i, each] of wanted.entries()) expectStates(parts[i]?.ifAsClaimed as StateOdds, each);
    expect(claimed.log10).toBeCloseTo(-0.0904, 4);
  });

  it("[B12] has the chain in a fixed order, which adds up, and the weights left out one by one", () => {
    const order = ["pit", "arc", "dovetail", "oval"];
    const units = order.map((key) => ({ key, observations: [id<"observation">(key)] }));
    const before = logOdds(posterior.model.prior, FROM, CLAIMED);
    const reached = chainOf(posterior, units, given).map((years) => logOdds(years, FROM, CLAIMED) - before);
    const steps = reached.map((value, i) => value - (reached[i - 1] ?? 0));
    for (const [i, step] of [0.2918, -0.1046, 0.0258, -0.3034].entries())
      expect(steps[i]).toBeCloseTo(step, 4);
    expect(reached.at(-1)).toBeCloseTo(-0.0904, 4);
    const { total, steps: weights } = readWeights(posterior, CLAIMED, given);
    expect(total).toBeCloseTo(-0.0904, 4);
    const alone = Object.fromEntries(weights.map((one) => [one.observations.join(), one.leaveOneOut]));
    const wanted = { pit: 0.2642, arc: -0.0459, dovetail: 0.0116, oval: -0.3034 };
    for (const [key, value] of Object.entries(wanted)) expect(alone[key]).toBeCloseTo(value, 4);
    expect(weights.map(({ observations }) => observations.join())).toEqual([
      "oval",
      "pit",
      "arc",
      "dovetail",
    ]);
  });

  it("[B13] moves with the odds of later drawers as printed, and little as a whole", () => {
    const laters = [
      [states(0.885, 0.085, 0.03), 0.490275],
      [states(0.8, 0.17, 0.03), 0.679593],
      [states(0.63, 0.34, 0.03), 0.8422],
    ] as const;
    for (const [prior, wanted] of laters) {
      const changed = weighModel(e1(prior));
      expect(statesOf(changed, 1).later).toBeCloseTo(wanted, 6);
      expect(Math.abs(between(changed.years, ...CLAIMED) - 0.045129)).toBeLessThan(0.001);
    }
  });

  it("[B13] has the bounds of a prior that may in part be anything", () => {
    const bounds = [
      [0.1, 0.026, 0.1285],
      [0.5, 0.0059, 0.487],
    ] as const;
    for (const [epsilon, least, greatest] of bounds) {
      const found = contaminated(posterior, CLAIMED, epsilon);
      expect(found[0]).toBeCloseTo(least, 4);
      expect(found[1]).toBeCloseTo(greatest, 4);
    }
  });
});

describe("[B5] traces of one tool", () => {
  it.each([
    [1, 13.18, 1.12, 0.9295],
    [2, 42.57, 1.629, 0.977],
    [5, 49, 1.69, 0.98],
  ])(
    "%d of them weigh what the tool allows, which is never above its own 49",
    (traces, ratio, log10, share) => {
      const { years } = weighModel(oneTool(traces));
      const odds = logOdds(years, FROM, [1800, TO]);
      expect(10 ** odds).toBeCloseTo(ratio, 2);
      expect(odds).toBeCloseTo(log10, 3);
      expect(between(years, 1800, TO)).toBeCloseTo(share, 4);
      expect(10 ** odds).toBeLessThan(49);
    },
  );
});

describe("[B6] three claims of one source", () => {
  it("weigh together, where apart they would weigh far more", () => {
    const odds = (isShared: boolean) => logOdds(weighModel(oneSource(isShared)).years, FROM, [1800, TO]);
    expect(Math.round(10 ** odds(false))).toBe(4175);
    expect(10 ** odds(true)).toBeCloseTo(73, 1);
    expect(odds(false)).toBeCloseTo(3.62, 2);
    expect(odds(true)).toBeCloseTo(1.86, 2);
  });
});

describe("a model in which nothing is possible", () => {
  it("is a defect, said at once", () => {
    const never = group("p", states(1, 0, 0), [factor("f", [1700, 1700], 0, 0)]);
    expect(() => weighModel(modelOf([[1, [never]]]))).toThrow("nothing is possible");
  });
});
