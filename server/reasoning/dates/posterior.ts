import type { StateOdds } from "../../domain/weighing/odds.ts";
import { type Mixture, mix } from "./mixture.ts";
import type { Case, Group, Model } from "./model.ts";

/** One case after what was seen. */
export interface CaseOdds {
  readonly given: Case;
  /** Its probability among the cases. */
  readonly probability: number;
  readonly mixtures: readonly Mixture[];
  /** Joint probability of the case and the year of making, by year - from; over all cases they add up to 1. */
  readonly years: Float64Array;
}

/** What follows from a model: exact, by summing over years, states and cases. */
export interface Posterior {
  readonly model: Model;
  /** Probability of the year of making, by year - from. */
  readonly years: Float64Array;
  /** Natural log of the probability of everything seen. */
  readonly logEvidence: number;
  readonly cases: readonly CaseOdds[];
}

/** Mixtures worked out before, by their group; only for models with one grid, `laterWork` and `reuseYears`. */
export type KnownMixtures = Map<Group, Mixture>;

/**
 * Weighs a model. O(cases x parts x years), and a mixture for each group that is not in `known`. Throws if a prior or factor leaves
 * nothing possible.
 */
export function weighModel(model: Model, known: KnownMixtures = new Map()): Posterior {
  const length = model.to - model.from + 1;
  const mixed = (group: Group): Mixture => {
    const found = known.get(group) ?? mix(group, length, model.laterWork, model.reuseYears);
    known.set(group, found);
    return found;
  };
  const logPrior = model.prior.map(Math.log);
  const weighed = model.cases.map((given) => {
    const mixtures = given.groups.map(mixed);
    const logWeight = Math.log(given.weight);
    const logs = logPrior.map((value) => value + logWeight);
    for (const { logAll } of mixtures)
      for (let t = 0; t < length; t++) logs[t] = (logs[t] as number) + (logAll[t] as number);
    return { given, mixtures, logs };
  });
  let largest = Number.NEGATIVE_INFINITY;
  for (const { logs } of weighed) for (const log of logs) if (log > largest) largest = log;
  if (largest === Number.NEGATIVE_INFINITY) throw new Error("nothing is possible under the model");
  let total = 0;
  for (const { logs } of weighed) for (const log of logs) total += Math.exp(log - largest);
  const years = new Float64Array(length);
  const cases = weighed.map(({ given, mixtures, logs }): CaseOdds => {
    let probability = 0;
    const joint = logs.map((log, t) => {
      const share = Math.exp(log - largest) / total;
      probability += share;
      years[t] = (years[t] as number) + share;
      return share;
    });
    return { given, probability, mixtures, years: joint };
  });
  return { model, years, logEvidence: largest + Math.log(total), cases };
}

/** Probability of each state of one group. */
export function statesOf({ cases }: Posterior, group: number): StateOdds {
  const sum = { original: 0, later: 0, reused: 0, reworked: 0 };
  for (const { mixtures, years } of cases) {
    const mixture = mixtures[group] as Mixture;
    for (let t = 0; t < years.length; t++) {
      const all = mixture.all[t] as number;
      if (all === 0) continue;
      const share = (years[t] as number) / all;
      sum.original += share * (mixture.original[t] as number);
      sum.later += share * (mixture.later[t] as number);
      sum.reused += share * (mixture.reused[t] as number);
      sum.reworked += share * (mixture.reworked[t] as number);
    }
  }
  return sum;
}
