import type { ObservationId } from "../../domain/ids.ts";
import type { Span } from "../../domain/years.ts";
import { type Mixture, mixedIn, type States } from "../dates/mixture.ts";
import type { Posterior } from "../dates/posterior.ts";
import type { Workings } from "../dates/workings.ts";
import { groupsSeenOn } from "./groups-seen-on.ts";

/** Probabilities, as multiples of that of everything seen: of what is left with the claimed years, and with any others. */
export interface Left {
  readonly claimed: number;
  readonly others: number;
}

/** A group that loses something in some cases. */
interface Loss {
  readonly before: Mixture;
  readonly after: States;
  readonly scale: number;
}

/**
 * Asks what the weighing would be if some observations had not been recorded: the joint of each case and year, times what its groups
 * gain. O(cases x years), and a shape for each group that loses something.
 */
export function leaveOut(
  { model, cases, allowed }: Posterior,
  claimed: Span,
  { mixer, reduced }: Pick<Workings, "mixer" | "reduced">,
): (observations: readonly ObservationId[]) => Left {
  const seenOn = groupsSeenOn(model);
  const [first, last] = allowed;
  return (observations) => {
    const isKept = (id: ObservationId): boolean => !observations.includes(id);
    const touched = [...new Set(observations.flatMap((id) => seenOn.get(id) ?? []))];
    const left = { claimed: 0, others: 0 };
    for (const { alike, mixtures, years } of cases) {
      const losses = touched.flatMap((i): readonly Loss[] => {
        const group = alike[0]?.groups[i];
        const before = mixtures[i];
        const without = group && reduced(group, isKept);
        if (without === undefined || before === undefined || without === group) return [];
        const after = mixer.states(without, model);
        return [{ before, after, scale: Math.exp(after.logScale - before.logScale) }];
      });
      for (let t = first; t <= last; t++) {
        let share = years[t] as number;
        if (share === 0) continue;
        for (const { before, after, scale } of losses)
          share *= (scale * mixedIn(after, t)) / (before.all[t] as number);
        const isClaimed = model.from + t >= claimed[0] && model.from + t <= claimed[1];
        left[isClaimed ? "claimed" : "others"] += share;
      }
    }
    return left;
  };
}
