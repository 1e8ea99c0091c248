import type { Span, Year } from "../../domain/years.ts";
import { shareWithin } from "./share-within.ts";

/** log10 of the odds of the claimed years; infinite where they are certain or excluded. `odds` by year - from, adding up to 1. */
export function logOdds(odds: Float64Array, from: Year, claimed: Span): number {
  const inside = shareWithin(odds, from, claimed);
  const outside =
    shareWithin(odds, from, [from, claimed[0] - 1]) +
    shareWithin(odds, from, [claimed[1] + 1, from + odds.length]);
  return Math.log10(inside) - Math.log10(outside);
}
