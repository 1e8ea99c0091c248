import { type Mixture, meanAfter, meanBefore } from "../dates/mixture.ts";
import type { SignFactor } from "../dates/model.ts";
import type { Posterior } from "../dates/posterior.ts";

/** What one more thing on a group would say: its probability by year of the work, and in each state of the part. */
export interface Foreseen {
  readonly byYear: Float64Array;
  readonly byState: SignFactor["byState"];
}

/** Joint probabilities with "it is seen", by year of the first making over all cases, and by state of the group. */
export interface Foresight {
  readonly seen: number;
  readonly seenByYear: Float64Array;
  readonly seenByState: Record<keyof SignFactor["byState"], number>;
}

/**
 * The probability of seeing one more thing on a group, exactly: only this group's mixture changes. `each` gives what it would say in
 * each case. O(cases x years).
 */
export function foresee(
  { cases, model, years }: Posterior,
  group: number,
  each: (caseIndex: number) => Foreseen,
): Foresight {
  const seenByYear = new Float64Array(years.length);
  const seenByState = { original: 0, later: 0, reused: 0, reworked: 0 };
  let seen = 0;
  const q = Math.exp(-1 / model.reuseYears);
  for (const [c, { mixtures, years: joint }] of cases.entries()) {
    const mixture = mixtures[group] as Mixture;
    const { byYear, byState } = each(c);
    const both = mixture.seen.map((value, t) => value * (byYear[t] as number));
    const after = meanAfter(both);
    const before = meanBefore(both, q);
    const alone = meanAfter(byYear);
    for (let t = 0; t < joint.length; t++) {
      const all = mixture.all[t] as number;
      if (all === 0) continue;
      const share = (joint[t] as number) / all;
      const worked = (1 - model.laterWork) * (byYear[t] as number) + model.laterWork * (alone[t] as number);
      const original = share * (mixture.original[t] as number) * (byYear[t] as number) * byState.original;
      const later = share * mixture.odds.later * (after[t] as number) * byState.later;
      const reused = share * mixture.odds.reused * (before[t] as number) * byState.reused;
      const reworked = share * (mixture.reworked[t] as number) * worked * byState.reworked;
      const sum = original + later + reused + reworked;
      seenByYear[t] = (seenByYear[t] as number) + sum;
      seen += sum;
      seenByState.original += original;
      seenByState.later += later;
      seenByState.reused += reused;
      seenByState.reworked += reworked;
    }
  }
  return { seen, seenByYear, seenByState };
}
