import type { ObservationId } from "../../domain/ids.ts";
import type { Factor, Group } from "./model.ts";

/** A group as if only some observations had been recorded; one that loses nothing stays the same object. */
export type Reducer = (group: Group, isKept: (observation: ObservationId) => boolean) => Group;

/** A reducer that gives groups with one list of factors one list again where they lose the same of it. */
export function reducer(): Reducer {
  const lists = new Map<readonly Factor[], Map<string, readonly Factor[]>>();
  return (group, isKept) => {
    const keeps = ({ observations }: Pick<Factor, "observations">): boolean => observations.every(isKept);
    const signs = group.signs.filter(keeps);
    const which = group.factors.map((factor) => (keeps(factor) ? "1" : "0")).join("");
    if (!which.includes("0") && signs.length === group.signs.length) return group;
    const known = lists.get(group.factors) ?? new Map<string, readonly Factor[]>();
    lists.set(group.factors, known);
    const factors = known.get(which) ?? group.factors.filter(keeps);
    known.set(which, factors);
    return { ...group, factors, signs };
  };
}
