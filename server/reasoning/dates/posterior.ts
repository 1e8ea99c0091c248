import type { StateOdds } from "../../domain/weighing/odds.ts";
import type { Span } from "../../domain/years.ts";
import { type Mixer, type Mixture, mixer } from "./mixture.ts";
import type { Case, Group, Model } from "./model.ts";
import { numbering } from "./numbering.ts";

/** Cases that have the same groups, after what was seen. */
export interface CaseOdds {
  readonly alike: readonly Case[];
  /** Their probability among the cases; each has its share of it by its weight. */
  readonly probability: number;
  readonly mixtures: readonly Mixture[];
  /** Joint probability of these cases and the year of making, by year - from; over all they add up to 1. */
  readonly years: Float64Array;
}

/** What follows from a model: exact, by summing over years, states and cases. */
export interface Posterior {
  readonly model: Model;
  /** The years that the prior allows lie within these, by year - from. */
  readonly allowed: Span;
  /** Probability of the year of making, by year - from. */
  readonly years: Float64Array;
  /** Natural log of the probability of everything seen. */
  readonly logEvidence: number;
  readonly cases: readonly CaseOdds[];
}

/** Weighs a model. O(cases x parts x years). Throws if a prior or factor leaves nothing possible. */
export function weighModel(model: Model, by: Mixer = mixer()): Posterior {
  const { prior } = model;
  const allowed: Span = [prior.findIndex((p) => p > 0), prior.findLastIndex((p) => p > 0)];
  const [first, last] = allowed;
  let largest = Number.NEGATIVE_INFINITY;
  const weighed = alikeCases(model.cases).map((alike) => {
    const mixtures = (alike[0] as Case).groups.map((group) => by.mix(group, model));
    const joint = new Float64Array(prior.length);
    const scale = mixtures.reduce((sum, { logScale }) => sum + logScale, Math.log(weightOf(alike)));
    for (let t = first; t <= last; t++) {
      const log = scale + logOfProduct(prior[t] as number, mixtures, t);
      joint[t] = log;
      if (log > largest) largest = log;
    }
    return { alike, mixtures, joint };
  });
  if (largest === Number.NEGATIVE_INFINITY) throw new Error("nothing is possible under the model");
  let total = 0;
  for (const { joint } of weighed)
    for (let t = first; t <= last; t++) {
      joint[t] = Math.exp((joint[t] as number) - largest);
      total += joint[t] as number;
    }
  const years = new Float64Array(prior.length);
  const cases = weighed.map(({ alike, mixtures, joint }): CaseOdds => {
    let probability = 0;
    for (let t = first; t <= last; t++) {
      const share = (joint[t] as number) / total;
      joint[t] = share;
      years[t] = (years[t] as number) + share;
      probability += share;
    }
    return { alike, probability, mixtures, years: joint };
  });
  return { model, allowed, years, logEvidence: largest + Math.log(total), cases };
}

/** Cases by their groups; those with the same groups differ in their weight alone. */
function alikeCases(cases: readonly Case[]): readonly (readonly Case[])[] {
  const numberOf = numbering<Group>();
  return [...Map.groupBy(cases, ({ groups }) => groups.map(numberOf).join(" ")).values()];
}

/** Weight of cases together. */
export const weightOf = (alike: readonly Case[]): number =>
  alike.reduce((sum, { weight }) => sum + weight, 0);

/** Below this a product is taken apart, so that nothing is lost at the end of what numbers can hold. */
const LEAST_PRODUCT = 1e-250;

/** Natural log of a prior times all mixtures in one year. */
function logOfProduct(prior: number, mixtures: readonly Mixture[], t: number): number {
  let product = prior;
  for (const { all } of mixtures) product *= all[t] as number;
  return product > LEAST_PRODUCT || prior === 0
    ? Math.log(product)
    : mixtures.reduce((sum, { all }) => sum + Math.log(all[t] as number), Math.log(prior));
}

/** The cases of the model one by one, each with its share of those it is alike to. */
export const casesApart = ({ cases }: Posterior) =>
  cases.flatMap(({ alike, mixtures, years }) =>
    alike.map((given) => {
      const share = given.weight / weightOf(alike);
      return { given, mixtures, years: alike.length === 1 ? years : years.map((p) => p * share) };
    }),
  );

/** Each mixture that a group has in some cases, with the joint probabilities of those cases and the years. */
export function yearsByMixture({ cases }: Posterior, group: number): ReadonlyMap<Mixture, Float64Array> {
  const byMixture = Map.groupBy(cases, ({ mixtures }) => {
    const mixture = mixtures[group];
    if (mixture === undefined) throw new Error(`the model has no group ${group}`);
    return mixture;
  });
  return new Map([...byMixture].map(([mixture, alike]) => [mixture, sumOf(alike.map(({ years }) => years))]));
}

function sumOf([one, ...others]: readonly Float64Array[]): Float64Array {
  if (one === undefined || others.length === 0) return one ?? new Float64Array();
  const sum = one.slice();
  for (const values of others)
    for (let t = 0; t < sum.length; t++) sum[t] = (sum[t] as number) + (values[t] as number);
  return sum;
}

/** Probability of each state of one group. */
export function statesOf(posterior: Posterior, group: number): StateOdds {
  const [first, last] = posterior.allowed;
  let [original, later, reused, reworked] = [0, 0, 0, 0];
  for (const [{ seen, after, before, worked, odds, all }, years] of yearsByMixture(posterior, group)) {
    let [ofSeen, ofAfter, ofBefore, ofWorked] = [0, 0, 0, 0];
    for (let t = first; t <= last; t++) {
      if (all[t] === 0) continue;
      const share = (years[t] as number) / (all[t] as number);
      ofSeen += share * (seen[t] as number);
      ofAfter += share * (after[t] as number);
      ofBefore += share * (before[t] as number);
      ofWorked += share * (worked[t] as number);
    }
    original += odds.original * ofSeen;
    later += odds.later * ofAfter;
    reused += odds.reused * ofBefore;
    reworked += odds.reworked * ofWorked;
  }
  return { original, later, reused, reworked };
}
