import type { Credible, YearOdds } from "../../domain/weighing/dates.ts";
import { significant } from "../../domain/weighing/significant.ts";
import type { Year } from "../../domain/years.ts";

const SHARE = 0.95;
/** Years told as one: finer than any evidence of this kind. */
const STEP = 5;
/** Probabilities this near to each other count as tied: rounding must not cut an interval. */
const TIE = 1e-9;

/** The most probable years that hold 95 %, ties taken whole, as spans. `odds` by year - from. */
export function credibleYears(odds: Float64Array, from: Year): Credible {
  let mass = 0;
  let least = Number.POSITIVE_INFINITY;
  for (const value of odds.toSorted().reverse()) {
    if (mass >= SHARE && value < least * (1 - TIE)) break;
    mass += value;
    least = value;
  }
  const years: [number, number][] = [];
  for (const [t, value] of odds.entries()) {
    if (value === 0 || value < least * (1 - TIE)) continue;
    const last = years.at(-1);
    if (last && last[1] === from + t - 1) last[1] = from + t;
    else years.push([from + t, from + t]);
  }
  return { years, mass: significant(Math.min(1, mass)) };
}

/** Probabilities of years, with their mode (the earliest of ties), mean and credible years. */
export function yearOdds(odds: Float64Array, from: Year): YearOdds {
  let mode = 0;
  let mean = 0;
  for (const [t, value] of odds.entries()) {
    if (value > (odds[mode] as number) * (1 + TIE)) mode = t;
    mean += value * (from + t);
  }
  return {
    ...{ from, step: STEP },
    odds: Array.from({ length: Math.ceil(odds.length / STEP) }, (_, i) =>
      significant(odds.subarray(i * STEP, (i + 1) * STEP).reduce((sum, value) => sum + value, 0)),
    ),
    mode: from + mode,
    mean: significant(mean),
    credible: credibleYears(odds, from),
  };
}
