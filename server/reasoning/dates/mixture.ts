import type { Group } from "./model.ts";

/** The years of one group under each of its states, all divided by one scale. By year of the first making. */
export interface Mixture {
  /** P(seen | the part was made in year u). */
  readonly seen: Float64Array;
  readonly original: Float64Array;
  readonly later: Float64Array;
  readonly reused: Float64Array;
  readonly reworked: Float64Array;
  /** Sum of the four: P(seen on the group | first making in year t). */
  readonly all: Float64Array;
  /** Natural log of `all`, the scale taken back. */
  readonly logAll: Float64Array;
  /** What the priors and signs multiply each state by. */
  readonly odds: {
    readonly original: number;
    readonly later: number;
    readonly reused: number;
    readonly reworked: number;
  };
}

/**
 * Mixes the four states of a group over the years: original at the year of making; later, any year after it alike; reused, older by a
 * geometric age; reworked, made then with each dating feature of later work by chance `laterWork`. At the ends of the grid the part
 * is of that year itself. O(years) for each factor.
 */
export function mix(group: Group, years: number, laterWork: number, reuseYears: number): Mixture {
  const seen = new Float64Array(years).fill(1);
  const worked = new Float64Array(years).fill(1);
  let logScale = 0;
  for (const { byYear } of group.factors) {
    const after = meanAfter(byYear);
    let largest = 0;
    for (let t = 0; t < years; t++) {
      seen[t] = (seen[t] as number) * (byYear[t] as number);
      worked[t] =
        (worked[t] as number) * ((1 - laterWork) * (byYear[t] as number) + laterWork * (after[t] as number));
      largest = Math.max(largest, seen[t] as number, worked[t] as number);
    }
    if (largest === 0) continue;
    for (let t = 0; t < years; t++) {
      seen[t] = (seen[t] as number) / largest;
      worked[t] = (worked[t] as number) / largest;
    }
    logScale += Math.log(largest);
  }
  const odds = oddsOf(group);
  const after = meanAfter(seen);
  const before = meanBefore(seen, Math.exp(-1 / reuseYears));
  const original = new Float64Array(years);
  const later = new Float64Array(years);
  const reused = new Float64Array(years);
  const reworked = new Float64Array(years);
  const all = new Float64Array(years);
  for (let t = 0; t < years; t++) {
    original[t] = odds.original * (seen[t] as number);
    later[t] = odds.later * (after[t] as number);
    reused[t] = odds.reused * (before[t] as number);
    reworked[t] = odds.reworked * (worked[t] as number);
    all[t] = (original[t] as number) + (later[t] as number) + (reused[t] as number) + (reworked[t] as number);
  }
  const logAll = all.map((value) => Math.log(value) + logScale);
  return { seen, original, later, reused, reworked, all, logAll, odds };
}

/** Priors of the states, each times the probability of the signs in it. */
function oddsOf({ prior, signs }: Group): Mixture["odds"] {
  const times = (state: keyof typeof prior): number =>
    signs.reduce((product, { byState }) => product * byState[state], prior[state]);
  return {
    original: times("original"),
    later: times("later"),
    reused: times("reused"),
    reworked: times("reworked"),
  };
}

/** Mean over the years after each; at the last, the value there. */
export function meanAfter(values: Float64Array): Float64Array {
  const last = values.length - 1;
  const means = new Float64Array(values.length);
  means[last] = values[last] as number;
  let sum = 0;
  for (let t = last - 1; t >= 0; t--) {
    sum += values[t + 1] as number;
    means[t] = sum / (last - t);
  }
  return means;
}

/** Mean over the years before each, the nearest weighing most (ratio `q` a year), cut off at the first; there, the value itself. */
export function meanBefore(values: Float64Array, q: number): Float64Array {
  const means = new Float64Array(values.length);
  means[0] = values[0] as number;
  let sum = 0;
  let power = 1;
  for (let t = 1; t < values.length; t++) {
    sum = (1 - q) * (values[t - 1] as number) + q * sum;
    power *= q;
    means[t] = sum / (1 - power);
  }
  return means;
}
