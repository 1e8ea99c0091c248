import type { Span, Year } from "../../domain/years.ts";

/** log10 of the odds of the claimed years; infinite where they are certain or excluded. `odds` by year - from, adding up to 1. */
export function logOdds(odds: Float64Array, from: Year, claimed: Span): number {
  let [inside, outside] = [0, 0];
  for (let t = 0; t < odds.length; t++) {
    const isClaimed = from + t >= claimed[0] && from + t <= claimed[1];
    if (isClaimed) inside += odds[t] as number;
    else outside += odds[t] as number;
  }
  return Math.log10(inside) - Math.log10(outside);
}
