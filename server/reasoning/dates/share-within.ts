import type { Span, Year } from "../../domain/years.ts";

/** How much of the probabilities lies within the years. `odds` by year - from. */
export function shareWithin(odds: Float64Array, from: Year, [first, last]: Span): number {
  let sum = 0;
  const end = Math.min(odds.length - 1, last - from);
  for (let t = Math.max(0, first - from); t <= end; t++) sum += odds[t] as number;
  return sum;
}
