import type { StateOdds } from "../../domain/weighing/odds.ts";
import type { Span } from "../../domain/years.ts";
import type { Mixture } from "../dates/mixture.ts";
import type { Model } from "../dates/model.ts";

/** For each state of a group, what one more thing seen in year u would multiply, by u - from. */
export type ByState = Readonly<Record<keyof StateOdds, Float64Array>>;

/**
 * A group as one more thing on it meets it. The joint probability of everything seen, of a state and of one thing more, is linear
 * in the thing's probabilities by year: these are its coefficients, over all years of making and over the claimed ones alone.
 */
export interface Outlook {
  readonly all: ByState;
  readonly claimed: ByState;
}

/**
 * The outlook of a group in cases where it is one mixture. `byYear` has their joint probability with each year of making over
 * P(seen on the group | year). O(years).
 */
export function outlookOf(
  mixture: Mixture,
  byYear: Float64Array,
  model: Pick<Model, "from" | "laterWork" | "reuseYears">,
  [first, last]: Span,
): Outlook {
  const within = byYear.map((value, t) => (model.from + t >= first && model.from + t <= last ? value : 0));
  return { all: coefficients(mixture, byYear, model), claimed: coefficients(mixture, within, model) };
}

function coefficients(
  { seen, odds, ...mixture }: Mixture,
  weights: Float64Array,
  { laterWork, reuseYears }: Pick<Model, "laterWork" | "reuseYears">,
): ByState {
  const later = backFromAfter(weights);
  const reused = backFromBefore(weights, Math.exp(-1 / reuseYears));
  const worked = weights.map((value, t) => value * odds.reworked * (mixture.worked[t] as number));
  const workedLater = backFromAfter(worked);
  return {
    original: weights.map((value, u) => odds.original * value * (seen[u] as number)),
    later: later.map((value, u) => odds.later * value * (seen[u] as number)),
    reused: reused.map((value, u) => odds.reused * value * (seen[u] as number)),
    reworked: worked.map((value, u) => (1 - laterWork) * value + laterWork * (workedLater[u] as number)),
  };
}

/** What each year gives to a weighted sum of means over the years after each; the last has its own alone. */
function backFromAfter(weights: Float64Array): Float64Array {
  const last = weights.length - 1;
  const given = new Float64Array(weights.length);
  let sum = 0;
  for (let u = 1; u <= last; u++) {
    sum += (weights[u - 1] as number) / (last - u + 1);
    given[u] = sum;
  }
  given[last] = (given[last] as number) + (weights[last] as number);
  return given;
}

/** The same of means over the years before each, the nearest weighing most (ratio `q` a year); the first has its own alone. */
function backFromBefore(weights: Float64Array, q: number): Float64Array {
  const given = new Float64Array(weights.length);
  let sum = 0;
  for (let u = weights.length - 2; u >= 0; u--) {
    sum = q * sum + ((1 - q) * (weights[u + 1] as number)) / (1 - q ** (u + 1));
    given[u] = sum;
  }
  given[0] = (given[0] as number) + (weights[0] as number);
  return given;
}
