import { meanAfter } from "./mixture.ts";
import type { Posterior } from "./posterior.ts";

/**
 * When the later work on a group was done if it is reworked: probability of the year of a later-worked feature, by year - from.
 * Undefined where no factor tells of a year. O(cases x factors x years).
 */
export function workedIn({ cases, model }: Posterior, group: number): Float64Array | undefined {
  const length = model.to - model.from + 1;
  const worked = new Float64Array(length);
  for (const { given, mixtures, years } of cases) {
    const { reworked, all } = mixtures[group] as (typeof mixtures)[number];
    for (const { byYear } of given.groups[group]?.factors ?? []) {
      if (byYear.every((value) => value === byYear[0])) continue;
      const after = meanAfter(byYear);
      let earlier = 0;
      for (let u = 0; u < length; u++) {
        worked[u] = (worked[u] as number) + (byYear[u] as number) * earlier;
        const mixed = (1 - model.laterWork) * (byYear[u] as number) + model.laterWork * (after[u] as number);
        if (u === length - 1 || all[u] === 0 || mixed === 0) continue;
        const isReworked = ((years[u] as number) * (reworked[u] as number)) / (all[u] as number);
        earlier += (isReworked * model.laterWork) / mixed / (length - 1 - u);
      }
    }
  }
  const total = worked.reduce((sum, value) => sum + value, 0);
  return total > 0 ? worked.map((value) => value / total) : undefined;
}
