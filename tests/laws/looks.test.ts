import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { StateOdds } from "#server/domain/weighing/odds.ts";
import type { Span } from "#server/domain/years.ts";
import type { Group, Model } from "#server/reasoning/dates/model.ts";
import { type Posterior, statesOf, weighModel } from "#server/reasoning/dates/posterior.ts";
import { shareWithin } from "#server/reasoning/dates/share-within.ts";
import { bitsOf } from "#server/reasoning/looks/bits-of.ts";
import { type Foreseen, foresee } from "#server/reasoning/looks/foresee.ts";
import { entropy } from "#server/reasoning/looks/information.ts";
import { outlookOf } from "#server/reasoning/looks/outlook.ts";
import { anyModel } from "#tests/support/any-model.ts";

const RUNS = { numRuns: 200 };
const STATES = ["original", "later", "reused", "reworked"] as const;
const NOTHING = { original: 1, later: 1, reused: 1, reworked: 1 };

const probability = fc.double({ min: 0.02, max: 0.98, noNaN: true });

/** A model with one more thing that could be seen on one of its groups, and claimed years. */
const anyLook = anyModel.chain((model) => {
  const years = model.to - model.from + 1;
  return fc.record({
    model: fc.constant(model),
    group: fc.nat({ max: (model.cases[0]?.groups.length ?? 1) - 1 }),
    byYear: fc.array(probability, { minLength: years, maxLength: years }).map((p) => Float64Array.from(p)),
    byState: fc.oneof(
      fc.constant(NOTHING),
      fc.record({ original: probability, later: probability, reused: probability, reworked: probability }),
    ),
    claimed: fc
      .tuple(fc.integer({ min: 0, max: years - 1 }), fc.integer({ min: 0, max: years - 1 }))
      .map(([a, b]): Span => [model.from + Math.min(a, b), model.from + Math.max(a, b)]),
    access: probability,
  });
});

/** The outlooks of one group, each case by itself, with what one more thing would say. */
const outlooksOf = ({ cases, model }: Posterior, group: number, foreseen: Foreseen, claimed: Span) =>
  cases.map(({ mixtures, years }) => {
    const mixture = mixtures[group];
    if (mixture === undefined) throw new Error("no such group");
    const byYear = years.map((p, t) => p / (mixture.all[t] as number));
    return { outlook: outlookOf(mixture, byYear, model, claimed), foreseen };
  });

/** The model with the thing seen, as one more factor and one more sign of its group. */
const withSeen = (model: Model, group: number, { byYear, byState }: Foreseen): Model => ({
  ...model,
  cases: model.cases.map((given) => ({
    ...given,
    groups: given.groups.map(
      (each, g): Group =>
        g === group
          ? {
              ...each,
              factors: [...each.factors, { observations: [], byYear }],
              signs: [...each.signs, { observations: [], byState }],
            }
          : each,
    ),
  })),
});

const foresights = (model: Model, group: number, foreseen: Foreseen, claimed: Span) => {
  const posterior = weighModel(model);
  const always = { byYear: new Float64Array(model.to - model.from + 1).fill(1), byState: NOTHING };
  return {
    posterior,
    before: foresee(outlooksOf(posterior, group, always, claimed)),
    seen: foresee(outlooksOf(posterior, group, foreseen, claimed)),
  };
};

describe("[N4] a look that is foreseen", () => {
  it("is what weighing the model again with it says", () => {
    fc.assert(
      fc.property(anyLook, ({ model, group, byYear, byState, claimed }) => {
        const { posterior, seen } = foresights(model, group, { byYear, byState }, claimed);
        const again = weighModel(withSeen(model, group, { byYear, byState }));
        expect(seen.seen).toBeCloseTo(Math.exp(again.logEvidence - posterior.logEvidence), 10);
        expect(seen.claimed / seen.seen).toBeCloseTo(shareWithin(again.years, model.from, claimed), 10);
        const states: StateOdds = statesOf(again, group);
        for (const state of STATES) expect(seen.byState[state] / seen.seen).toBeCloseTo(states[state], 10);
      }),
      RUNS,
    );
  });

  it("leaves everything as it is if it is as probable whatever is true", () => {
    fc.assert(
      fc.property(anyLook, ({ model, group, claimed }) => {
        const foreseen = { byYear: new Float64Array(model.to - model.from + 1).fill(0.3), byState: NOTHING };
        const { before, seen } = foresights(model, group, foreseen, claimed);
        expect(seen.seen).toBeCloseTo(0.3, 12);
        expect(seen.claimed).toBeCloseTo(0.3 * before.claimed, 12);
        const { bits, bitsOfState } = bitsOf(before, seen, 1);
        expect(bits).toBeCloseTo(0, 10);
        expect(bitsOfState).toBeCloseTo(0, 10);
      }),
      RUNS,
    );
  });
});

describe("[N5] bits expected of a look", () => {
  it("are never below nothing, nor above what is open", () => {
    fc.assert(
      fc.property(anyLook, ({ model, group, byYear, byState, claimed, access }) => {
        const { before, seen } = foresights(model, group, { byYear, byState }, claimed);
        const { bits, bitsOfState } = bitsOf(before, seen, access);
        expect(bits).toBeGreaterThanOrEqual(0);
        expect(bits).toBeLessThanOrEqual(access * entropy([before.claimed, 1 - before.claimed]) + 1e-12);
        expect(bitsOfState).toBeGreaterThanOrEqual(0);
        expect(bitsOfState).toBeLessThanOrEqual(access * entropy(Object.values(before.byState)) + 1e-12);
      }),
      RUNS,
    );
  });

  it("are the same for the claimed years and for all the others", () => {
    fc.assert(
      fc.property(
        anyLook,
        fc.integer({ min: 1, max: 3 }),
        ({ model, group, byYear, byState, access }, at) => {
          const early: Span = [model.from, model.from + at - 1];
          const late: Span = [model.from + at, model.to];
          const of = (claimed: Span): number => {
            const { before, seen } = foresights(model, group, { byYear, byState }, claimed);
            return bitsOf(before, seen, access).bits;
          };
          expect(of(early)).toBeCloseTo(of(late), 12);
        },
      ),
      RUNS,
    );
  });

  it("[N7] are as many fewer as the place is out of reach", () => {
    fc.assert(
      fc.property(anyLook, ({ model, group, byYear, byState, claimed, access }) => {
        const { before, seen } = foresights(model, group, { byYear, byState }, claimed);
        expect(bitsOf(before, seen, access).bits).toBeCloseTo(access * bitsOf(before, seen, 1).bits, 12);
      }),
      RUNS,
    );
  });
});
