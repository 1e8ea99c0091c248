import fc from "fast-check";
import { id } from "#server/domain/ids.ts";
import type { Factor, Group, Model, SignFactor } from "#server/reasoning/dates/model.ts";

const probability = fc.double({ min: 0.02, max: 0.98, noNaN: true });

const anyOdds = fc.tuple(probability, probability, probability, probability).map(([a, b, c, d]) => {
  const sum = a + b + c + d;
  return { original: a / sum, later: b / sum, reused: c / sum, reworked: d / sum };
});

const anyFactor = (years: number, name: string) =>
  fc.array(probability, { minLength: years, maxLength: years }).map(
    (odds): Factor => ({
      observations: [id<"observation">(name)],
      byYear: Float64Array.from(odds),
    }),
  );

const anySign = (name: string) =>
  fc.tuple(probability, probability, probability, probability).map(
    ([original, later, reused, reworked]): SignFactor => ({
      observations: [id<"observation">(name)],
      byState: { original, later, reused, reworked },
    }),
  );

const anyGroup = (years: number, name: string) =>
  fc
    .record({
      prior: anyOdds,
      factors: fc
        .integer({ min: 0, max: 2 })
        .chain((count) =>
          fc.tuple(...Array.from({ length: count }, (_, i) => anyFactor(years, `${name}.f${i}`))),
        ),
      signs: fc.oneof(fc.constant([]), fc.tuple(anySign(`${name}.s`))),
    })
    .map(({ prior, factors, signs }): Group => ({ parts: [id<"part">(name)], prior, factors, signs }));

/** Small models: a dozen years, up to three groups, one or two cases. Small enough to enumerate. */
export const anyModel: fc.Arbitrary<Model> = fc
  .tuple(fc.integer({ min: 4, max: 8 }), fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 2 }))
  .chain(([years, groups, cases]) => {
    const names = Array.from({ length: groups }, (_, i) => `p${i}`);
    const anyCase = fc.tuple(probability, fc.tuple(...names.map((name) => anyGroup(years, name))));
    return fc.record({
      prior: fc.array(probability, { minLength: years, maxLength: years }),
      cases: fc.array(anyCase, { minLength: cases, maxLength: cases }),
      laterWork: probability,
      reuseYears: fc.integer({ min: 2, max: 40 }),
    });
  })
  .map(({ prior, cases, laterWork, reuseYears }) => {
    const sum = prior.reduce((total, p) => total + p, 0);
    const weights = cases.reduce((total, [weight]) => total + weight, 0);
    return {
      ...{ from: 1700, to: 1700 + prior.length - 1, laterWork, reuseYears },
      prior: Float64Array.from(prior, (p) => p / sum),
      cases: cases.map(([weight, groups]) => ({
        ...{ place: { region: null, elsewhere: false }, weight: weight / weights, given: new Map() },
        groups,
      })),
      ...{ assumedShapes: [], tried: [], takenApart: [], used: [] },
    };
  });
