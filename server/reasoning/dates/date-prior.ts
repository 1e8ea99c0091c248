import type { DatePrior } from "../../domain/weighing/odds.ts";
import type { Span } from "../../domain/years.ts";
import type { Grid } from "./curve.ts";

/**
 * Prior of the year of making, by year - from; adds up to 1. As claimed: half of it within the claimed years, all years alike if they
 * lie outside the grid. By production: `made` has the documented pieces of each decade, and each decade one more.
 */
export function datePrior(
  which: DatePrior,
  { from, to }: Grid,
  claimed: Span,
  made?: ReadonlyMap<number, number>,
): Float64Array {
  const length = to - from + 1;
  const uniform = new Float64Array(length).fill(1 / length);
  if (which === "as claimed") {
    const [first, last] = [Math.max(from, claimed[0]), Math.min(to, claimed[1])];
    if (first > last) return uniform;
    const share = 0.5 / (last - first + 1);
    return uniform.map((value, t) => value / 2 + (from + t >= first && from + t <= last ? share : 0));
  }
  if (which === "uniform" || made === undefined) return uniform;
  const weights = uniform.map((_, t) => 1 + (made.get(Math.floor((from + t) / 10) * 10) ?? 0));
  const total = weights.reduce((sum, value) => sum + value, 0);
  return weights.map((value) => value / total);
}
