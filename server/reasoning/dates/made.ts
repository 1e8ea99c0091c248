import type { Posterior } from "./posterior.ts";

/**
 * Probability of the year in which the parts of a group were made, whatever their state: that of the piece if original or reworked, a
 * later one, or an earlier one if reused. By year - from; adds up to 1. O(cases x years).
 */
export function madeIn({ cases, model }: Posterior, group: number): Float64Array {
  const length = model.to - model.from + 1;
  const q = Math.exp(-1 / model.reuseYears);
  const made = new Float64Array(length);
  for (const { mixtures, years } of cases) {
    const mixture = mixtures[group];
    if (mixture === undefined) throw new Error(`the model has no group ${group}`);
    const { seen, odds, original, reworked, all } = mixture;
    const share = (t: number): number =>
      (all[t] as number) === 0 ? 0 : (years[t] as number) / (all[t] as number);
    let earlier = 0;
    for (let u = 0; u < length; u++) {
      add(made, u, share(u) * ((original[u] as number) + (reworked[u] as number)));
      add(made, u, (seen[u] as number) * odds.later * earlier);
      if (u < length - 1) earlier += share(u) / (length - 1 - u);
      else add(made, u, share(u) * odds.later * (seen[u] as number));
    }
    let younger = 0;
    for (let u = length - 1; u >= 0; u--) {
      add(made, u, (seen[u] as number) * odds.reused * younger);
      if (u > 0) younger = q * younger + (share(u) * (1 - q)) / (1 - q ** u);
      else add(made, 0, share(0) * odds.reused * (seen[0] as number));
    }
  }
  return made;
}

function add(values: Float64Array, at: number, value: number): void {
  values[at] = (values[at] as number) + value;
}
