import { PART_STATES, type PartState } from "../part-state.ts";
import type { StateOdds } from "./odds.ts";

/** How likely something is, in steps that have a word each, the likeliest first. */
export const LIKELIHOODS = ["very probable", "probable", "more likely than not", "possible"] as const;
export type Likelihood = (typeof LIKELIHOODS)[number];

/** What a part most probably is, as coarsely as words tell it. */
export interface LikelyState {
  readonly state: PartState;
  readonly likelihood: Likelihood;
  /** Something seen bears on it; else this is what is assumed of such a part. */
  readonly tells: boolean;
}

export const likelihoodOf = (p: number): Likelihood => {
  if (p >= 0.95) return "very probable";
  if (p >= 0.75) return "probable";
  return p >= 0.5 ? "more likely than not" : "possible";
};

/** Of ties the first in the order of the states. */
export const likeliestState = (odds: StateOdds): PartState =>
  PART_STATES.reduce((best, state) => (odds[state] > odds[best] ? state : best));

/** Within this of the prior, nothing seen bears on a part. */
const ALIKE = 0.005;

/** Whether something seen bears on the state of a part. */
export const tellsOfState = (odds: StateOdds, prior: StateOdds): boolean =>
  PART_STATES.some((state) => Math.abs(odds[state] - prior[state]) >= ALIKE);

/** There are few of them: equal ones are one object. */
const shared = new Map<string, LikelyState>();

/** What the odds of a part come to beside its prior. */
export function likelyStateOf(odds: StateOdds, prior: StateOdds): LikelyState {
  const state = likeliestState(odds);
  const likelihood = likelihoodOf(odds[state]);
  const tells = tellsOfState(odds, prior);
  const key = `${state} ${likelihood} ${tells}`;
  const known = shared.get(key) ?? { state, likelihood, tells };
  shared.set(key, known);
  return known;
}
