import type { ObservationId } from "../../domain/ids.ts";
import type { Mixture } from "../dates/mixture.ts";
import type { Group } from "../dates/model.ts";
import { type Posterior, weightOf } from "../dates/posterior.ts";
import type { Workings } from "../dates/workings.ts";
import { groupsSeenOn } from "./groups-seen-on.ts";
import type { Unit } from "./units-of.ts";

/**
 * The years after each unit in turn is counted in beside those before it, from the prior to all of them; by year - from, each but for a
 * constant. O(units x cases x years), and a mixture for each group that gains something.
 */
export function chainOf(
  { model, cases }: Posterior,
  units: readonly Unit[],
  { mixer, reduced }: Pick<Workings, "mixer" | "reduced">,
): readonly Float64Array[] {
  const seenOn = groupsSeenOn(model);
  const counted = new Set<ObservationId>();
  const reached = new Map<Group, Mixture>();
  const mixNow = (group: Group): Mixture =>
    mixer.mix(
      reduced(group, (id) => counted.has(id)),
      model,
    );
  const chains = cases.map(({ alike }) => {
    const groups = alike[0]?.groups ?? [];
    for (const group of groups) if (!reached.has(group)) reached.set(group, mixNow(group));
    const weight = Math.log(weightOf(alike));
    return { groups, logs: model.prior.map((prior) => Math.log(prior) + weight) };
  });

  /** What a group gains by what is counted now, as natural logs. */
  function gainOf(group: Group): Float64Array {
    const [before, now] = [reached.get(group) as Mixture, mixNow(group)];
    reached.set(group, now);
    const scale = now.logScale - before.logScale;
    return now.all.map((value, t) => Math.log(value / (before.all[t] as number)) + scale);
  }

  return units.map(({ observations }) => {
    for (const id of observations) counted.add(id);
    const gains = new Map<Group, Float64Array>();
    for (const i of new Set(observations.flatMap((id) => seenOn.get(id) ?? [])))
      for (const { groups, logs } of chains) {
        const group = groups[i] as Group;
        const gain = gains.get(group) ?? gainOf(group);
        gains.set(group, gain);
        for (let t = 0; t < logs.length; t++) logs[t] = (logs[t] as number) + (gain[t] as number);
      }
    return sumOfExponentials(chains.map(({ logs }) => logs));
  });
}

/** Of each year over the cases, the largest of all taken as 1. */
function sumOfExponentials(all: readonly Float64Array[]): Float64Array {
  let largest = Number.NEGATIVE_INFINITY;
  for (const logs of all) for (const log of logs) if (log > largest) largest = log;
  const sums = new Float64Array(all[0]?.length ?? 0);
  for (const logs of all)
    for (let t = 0; t < sums.length; t++)
      sums[t] = (sums[t] as number) + Math.exp((logs[t] as number) - largest);
  return sums;
}
