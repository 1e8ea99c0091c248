import type { Seen, Sureness } from "../../domain/examination.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";

/**
 * P(what was recorded | year), by year, from how common the thing was (docs/method.md). Seen: misread, or there, by the curve if its
 * claims are right and else by the mean of the curve. Looked for and absent: not there, or missed. Only a share of the parts of its
 * time have a thing, `prevalence`; it scales both, so it counts in an absence alone.
 */
export function seenOdds(
  currency: Float64Array,
  right: number,
  { seen, sureness }: { readonly seen: Seen; readonly sureness: Sureness },
  {
    misread,
    baseRate,
    detect,
    prevalence,
  }: Pick<AssumedOdds, "misread" | "baseRate" | "detect" | "prevalence">,
): Float64Array {
  if (seen === "unseen") return new Float64Array(currency.length).fill(1);
  const mean = meanOf(currency);
  const m = misread[sureness];
  return currency.map((value) => {
    const reported = prevalence * ((1 - m) * (right * value + (1 - right) * mean) + m * baseRate);
    return seen === "present" ? reported : 1 - detect * reported;
  });
}

/** Mean over all years. */
export function meanOf(values: Float64Array): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum / values.length;
}
