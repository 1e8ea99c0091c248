import type { StateOdds } from "../../domain/weighing/odds.ts";
import type { Span } from "../../domain/years.ts";
import type { Mixture } from "../dates/mixture.ts";
import type { Model } from "../dates/model.ts";
import type { Outlook } from "./outlook.ts";

/** What one more thing on a group would say: its probability by year of the work, and in each state of the part. */
export interface Foreseen {
  readonly byYear: Float64Array;
  readonly byState: StateOdds;
}

/** Joint probabilities with "it is seen": in all, with the claimed years, and by state of the group. */
export interface Foresight {
  readonly seen: number;
  readonly claimed: number;
  readonly byState: StateOdds;
}

/** The probability of seeing one more thing on a group, exactly, from its outlook in each case. O(outlooks x years). */
export function foresee(
  outlooks: readonly { readonly outlook: Outlook; readonly foreseen: Foreseen }[],
): Foresight {
  const sums = { original: 0, later: 0, reused: 0, reworked: 0 };
  let claimed = 0;
  for (const { outlook, foreseen } of outlooks) {
    const { byYear, byState } = foreseen;
    for (const state of STATES) {
      sums[state] += byState[state] * product(outlook.all[state], byYear);
      claimed += byState[state] * product(outlook.claimed[state], byYear);
    }
  }
  return foresightFrom(sums, claimed);
}

const STATES = ["original", "later", "reused", "reworked"] as const;

function product(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let t = 0; t < a.length; t++) sum += (a[t] as number) * (b[t] as number);
  return sum;
}

/** A mixture that becomes another when one more thing is seen on its group, with what its cases weigh in each year. */
export interface Changed {
  readonly before: Mixture;
  readonly after: Mixture;
  readonly byYear: Float64Array;
}

/**
 * The same where what is seen changes the mixture itself: it shares a tool or a cause with what was seen before. `times` is the
 * probability beside that of the mixture.
 */
export function foreseeInstead(
  changes: readonly Changed[],
  times: number,
  { from }: Pick<Model, "from">,
  [first, last]: Span,
): Foresight {
  const sums = { original: 0, later: 0, reused: 0, reworked: 0 };
  let claimed = 0;
  for (const { before, after, byYear } of changes) {
    const scale = times * Math.exp(after.logScale - before.logScale);
    const { odds } = after;
    for (let t = 0; t < byYear.length; t++) {
      const weight = scale * (byYear[t] as number);
      sums.original += weight * odds.original * (after.seen[t] as number);
      sums.later += weight * odds.later * (after.after[t] as number);
      sums.reused += weight * odds.reused * (after.before[t] as number);
      sums.reworked += weight * odds.reworked * (after.worked[t] as number);
      if (from + t >= first && from + t <= last) claimed += weight * (after.all[t] as number);
    }
  }
  return foresightFrom(sums, claimed);
}

const foresightFrom = (byState: StateOdds, claimed: number): Foresight => ({
  seen: byState.original + byState.later + byState.reused + byState.reworked,
  ...{ claimed, byState },
});
