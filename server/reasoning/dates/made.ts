import { type Posterior, yearsByMixture } from "./posterior.ts";

/**
 * Probability of the year in which the parts of a group were made, whatever their state: that of the piece if original or reworked, a
 * later one, or an earlier one if reused. By year - from; adds up to 1. O(cases x years).
 */
export function madeIn(posterior: Posterior, group: number): Float64Array {
  const { model } = posterior;
  const last = model.to - model.from;
  const q = Math.exp(-1 / model.reuseYears);
  const reach = new Float64Array(last + 1);
  for (let u = 1, power = q; u <= last; u++, power *= q) reach[u] = 1 - power;
  const made = new Float64Array(last + 1);
  const share = new Float64Array(last + 1);
  for (const [{ seen, worked, odds, all }, years] of yearsByMixture(posterior, group)) {
    let earlier = 0;
    for (let u = 0; u <= last; u++) {
      const one = all[u] === 0 ? 0 : (years[u] as number) / (all[u] as number);
      share[u] = one;
      const ofYear = odds.original * (seen[u] as number) + odds.reworked * (worked[u] as number);
      made[u] = (made[u] as number) + one * ofYear + (seen[u] as number) * odds.later * earlier;
      if (u < last) earlier += one / (last - u);
      else made[u] = (made[u] as number) + one * odds.later * (seen[u] as number);
    }
    let younger = 0;
    for (let u = last; u >= 0; u--) {
      made[u] = (made[u] as number) + (seen[u] as number) * odds.reused * younger;
      if (u > 0) younger = q * younger + ((share[u] as number) * (1 - q)) / (reach[u] as number);
      else made[0] = (made[0] as number) + (share[0] as number) * odds.reused * (seen[0] as number);
    }
  }
  return made;
}
