import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Span } from "#server/domain/years.ts";
import { madeIn } from "#server/reasoning/dates/made.ts";
import { mixer } from "#server/reasoning/dates/mixture.ts";
import { statesOf, weighModel } from "#server/reasoning/dates/posterior.ts";
import { reducer } from "#server/reasoning/dates/reducer.ts";
import { workedIn } from "#server/reasoning/dates/worked.ts";
import { contaminated } from "#server/reasoning/sensitivity/contaminated.ts";
import { readWeights } from "#server/reasoning/weights/read-weights.ts";
import { enumerateJoint } from "#tests/oracles/joint-by-enumeration.ts";
import { anyModel } from "#tests/support/any-model.ts";

const sum = (values: Iterable<number>): number => [...values].reduce((total, value) => total + value, 0);
const RUNS = { numRuns: 150 };

describe("[B1] [B8] [B9] the weighing of small models", () => {
  it("equals the joint written out one by one", () => {
    fc.assert(
      fc.property(anyModel, (model) => {
        const posterior = weighModel(model);
        const slow = enumerateJoint(model);
        expect(Math.exp(posterior.logEvidence) / slow.evidence).toBeCloseTo(1, 10);
        for (const [t, p] of slow.years.entries()) expect(posterior.years[t]).toBeCloseTo(p, 12);
        for (const [g, states] of slow.states.entries()) {
          const fast = statesOf(posterior, g);
          for (const state of ["original", "later", "reused", "reworked"] as const)
            expect(fast[state]).toBeCloseTo(states[state], 12);
          const made = madeIn(posterior, g);
          for (const [t, p] of (slow.made[g] ?? []).entries()) expect(made[t]).toBeCloseTo(p, 12);
        }
      }),
      RUNS,
    );
  });

  it("adds up", () => {
    fc.assert(
      fc.property(anyModel, (model) => {
        const posterior = weighModel(model);
        expect(sum(posterior.years)).toBeCloseTo(1, 12);
        expect(sum(posterior.cases.map(({ probability }) => probability))).toBeCloseTo(1, 12);
        for (const g of (model.cases[0]?.groups ?? []).keys()) {
          expect(sum(Object.values(statesOf(posterior, g)))).toBeCloseTo(1, 12);
          expect(sum(madeIn(posterior, g))).toBeCloseTo(1, 12);
          const worked = workedIn(posterior, g);
          if (worked) expect(sum(worked)).toBeCloseTo(1, 12);
        }
      }),
      RUNS,
    );
  });
});

describe("[B12] weights", () => {
  it("make a chain that adds up to the whole", () => {
    fc.assert(
      fc.property(anyModel, (model) => {
        const claimed: Span = [model.from + 1, model.from + 2];
        const { total, steps } = readWeights(weighModel(model), claimed, {
          mixer: mixer(),
          reduced: reducer(),
        });
        expect(sum(steps.map(({ chain }) => chain ?? Number.NaN))).toBeCloseTo(total ?? Number.NaN, 4);
      }),
      RUNS,
    );
  });
});

describe("[B13] bounds on the claimed years", () => {
  it("are the least and greatest over priors that lie in part on one year", () => {
    fc.assert(
      fc.property(anyModel, fc.double({ min: 0.01, max: 0.5, noNaN: true }), (model, epsilon) => {
        const claimed: Span = [model.from + 1, model.from + 2];
        const share = (years: Float64Array): number => (years[1] as number) + (years[2] as number);
        const mixed = Array.from(model.prior.keys(), (year) => {
          const prior = model.prior.map((p, t) => (1 - epsilon) * p + (t === year ? epsilon : 0));
          return share(weighModel({ ...model, prior }).years);
        });
        const [least, greatest] = contaminated(weighModel(model), claimed, epsilon);
        expect(least).toBeCloseTo(Math.min(...mixed), 10);
        expect(greatest).toBeCloseTo(Math.max(...mixed), 10);
      }),
      RUNS,
    );
  });
});
