import type { StateOdds } from "#server/domain/weighing/odds.ts";
import type { Group, Model } from "#server/reasoning/dates/model.ts";

/** What enumeration gives: the year of making, and for each group its states and the year it was made in. */
export interface Enumerated {
  readonly evidence: number;
  readonly years: readonly number[];
  readonly states: readonly StateOdds[];
  readonly made: readonly (readonly number[])[];
}

interface Outcome {
  readonly state: keyof StateOdds;
  readonly made: number;
  readonly probability: number;
}

/**
 * The joint of a small model by writing out every case, year, state, age and choice of later-worked features, one by one: an
 * independent second reading of the model as docs/method.md states it, with no recursion and no array in common with the engine.
 */
export function enumerateJoint(model: Model): Enumerated {
  const length = model.to - model.from + 1;
  const count = model.cases[0]?.groups.length ?? 0;
  const years = new Array<number>(length).fill(0);
  const states = Array.from({ length: count }, () => ({ original: 0, later: 0, reused: 0, reworked: 0 }));
  const made = Array.from({ length: count }, () => new Array<number>(length).fill(0));
  let evidence = 0;
  for (const { weight, groups } of model.cases)
    for (let t = 0; t < length; t++) {
      const outcomes = groups.map((group) => outcomesOf(group, t, length, model));
      const all = outcomes.map((each) => each.reduce((sum, { probability }) => sum + probability, 0));
      const joint = all.reduce((product, p) => product * p, weight * (model.prior[t] as number));
      evidence += joint;
      years[t] = (years[t] as number) + joint;
      for (const [g, each] of outcomes.entries())
        for (const { state, made: year, probability } of each) {
          const share = (joint / (all[g] as number)) * probability;
          const sums = states[g] as Record<keyof StateOdds, number>;
          sums[state] += share;
          const years = made[g] as number[];
          years[year] = (years[year] as number) + share;
        }
    }
  return {
    evidence,
    years: years.map((p) => p / evidence),
    states: states.map(({ original, later, reused, reworked }) => ({
      original: original / evidence,
      later: later / evidence,
      reused: reused / evidence,
      reworked: reworked / evidence,
    })),
    made: made.map((each) => each.map((p) => p / evidence)),
  };
}

function outcomesOf(
  { prior, factors, signs }: Group,
  t: number,
  length: number,
  { laterWork, reuseYears }: Model,
): readonly Outcome[] {
  const sign = (state: keyof StateOdds): number =>
    signs.reduce((product, { byState }) => product * byState[state], prior[state]);
  const at = (year: number): number =>
    factors.reduce((product, { byYear }) => product * (byYear[year] as number), 1);
  const found: Outcome[] = [{ state: "original", made: t, probability: sign("original") * at(t) }];
  const after = Array.from({ length: length - 1 - t }, (_, i) => t + 1 + i);
  for (const year of after.length > 0 ? after : [t])
    found.push({
      ...{ state: "later" as const, made: year },
      probability: (sign("later") / Math.max(1, after.length)) * at(year),
    });
  const q = Math.exp(-1 / reuseYears);
  const ages = Array.from({ length: t }, (_, i) => i + 1);
  const total = ages.reduce((sum, age) => sum + (1 - q) * q ** (age - 1), 0);
  for (const age of ages)
    found.push({
      ...{ state: "reused" as const, made: t - age },
      probability: sign("reused") * (((1 - q) * q ** (age - 1)) / total) * at(t - age),
    });
  if (t === 0) found.push({ state: "reused", made: 0, probability: sign("reused") * at(0) });
  for (let choice = 0; choice < 2 ** factors.length; choice++) {
    let probability = sign("reworked");
    for (const [f, { byYear }] of factors.entries()) {
      const isLater = (choice & (2 ** f)) !== 0;
      const dates = isLater && after.length > 0 ? after : [t];
      probability *= isLater ? laterWork : 1 - laterWork;
      probability *= dates.reduce((sum, year) => sum + (byYear[year] as number), 0) / dates.length;
    }
    found.push({ state: "reworked", made: t, probability });
  }
  return found;
}
