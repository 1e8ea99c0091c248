import type { ObservationId } from "../../domain/ids.ts";
import type { Model } from "../dates/model.ts";

/** The groups, by their number in every case, that each observation says something of. */
export function groupsSeenOn({ cases }: Model): ReadonlyMap<ObservationId, readonly number[]> {
  const found = new Map<ObservationId, number[]>();
  for (const { groups } of cases)
    for (const [i, { factors, signs }] of groups.entries())
      for (const { observations } of [...factors, ...signs])
        for (const id of observations) {
          const numbers = found.get(id) ?? [];
          if (!numbers.includes(i)) numbers.push(i);
          found.set(id, numbers);
        }
  return found;
}
