import type { ObservationId } from "../../domain/ids.ts";
import type { Model } from "../dates/model.ts";

/** Something that weighs as one: an observation, or several that cannot be told apart. */
export interface Unit {
  readonly key: string;
  readonly observations: readonly ObservationId[];
  readonly linkedBy?: "tool" | "source" | "cause" | "restoration";
}

/** What a model weighs. An observation that dates and is a sign as well, or a sign of a group with a tool, is one unit with it. */
export function unitsOf({ cases }: Model): readonly Unit[] {
  const groups = new Set(cases.flatMap((each) => each.groups));
  const all = [...groups].flatMap(({ factors, signs }) => [...factors, ...signs]);
  // Cases have many a link in common.
  const links = new Map(all.map((link) => [`${link.linkedBy} ${link.observations.join()}`, link])).values();
  const units: { observations: Set<ObservationId>; linkedBy: Unit["linkedBy"] }[] = [];
  for (const { observations, linkedBy } of links) {
    const touched = units.filter((unit) => observations.some((id) => unit.observations.has(id)));
    const merged = {
      observations: new Set([...touched.flatMap((unit) => [...unit.observations]), ...observations]),
      linkedBy: linkedBy ?? touched.find((unit) => unit.linkedBy)?.linkedBy,
    };
    for (const unit of touched) units.splice(units.indexOf(unit), 1);
    units.push(merged);
  }
  return units.map(({ observations, linkedBy }) => {
    const sorted = [...observations].sort();
    return { key: sorted.join(" "), observations: sorted, ...(linkedBy ? { linkedBy } : {}) };
  });
}
