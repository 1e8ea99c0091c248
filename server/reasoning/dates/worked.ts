import type { Factor, Model } from "./model.ts";
import { type Posterior, yearsByMixture } from "./posterior.ts";
import { meanAfter } from "./shape.ts";

/**
 * When the later work on a group was done if it is reworked: probability of the year of a later-worked feature, by year - from.
 * Undefined where no factor tells of a year. O(cases x factors x years).
 */
export function workedIn(posterior: Posterior, group: number): Float64Array | undefined {
  const { model } = posterior;
  const worked = new Float64Array(model.to - model.from + 1);
  for (const [{ factors, worked: seen, odds, all }, years] of yearsByMixture(posterior, group)) {
    const isReworked = years.map((share, t) =>
      all[t] === 0 ? 0 : (share * odds.reworked * (seen[t] as number)) / (all[t] as number),
    );
    for (const factor of factors) addLaterWork(worked, factor, isReworked, model);
  }
  const total = worked.reduce((sum, value) => sum + value, 0);
  return total > 0 ? worked.map((value) => value / total) : undefined;
}

/** Adds the years in which one feature was worked, if later; `isReworked` is joint with the year of the first making. */
function addLaterWork(
  worked: Float64Array,
  { byYear }: Factor,
  isReworked: Float64Array,
  { laterWork }: Model,
): void {
  if (byYear.every((value) => value === byYear[0])) return;
  const after = meanAfter(byYear);
  const last = worked.length - 1;
  let earlier = 0;
  for (let u = 0; u <= last; u++) {
    worked[u] = (worked[u] as number) + (byYear[u] as number) * earlier;
    const mixed = (1 - laterWork) * (byYear[u] as number) + laterWork * (after[u] as number);
    if (u < last && mixed > 0) earlier += ((isReworked[u] as number) * laterWork) / mixed / (last - u);
  }
}
