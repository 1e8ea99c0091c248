import type { ObservationId } from "../../domain/ids.ts";
import type { Group, Model } from "../dates/model.ts";

/** Something that weighs as one: an observation, or several that cannot be told apart. */
export interface Unit {
  readonly key: string;
  readonly observations: readonly ObservationId[];
  readonly linkedBy?: "tool" | "source" | "cause" | "restoration";
}

const keyOf = (observations: readonly ObservationId[]): string => observations.join(" ");

/** What a model weighs. An observation that dates and is a sign as well, or a sign of a group with a tool, is one unit with it. */
export function unitsOf({ cases }: Model): readonly Unit[] {
  const groups = new Set(cases.flatMap((each) => each.groups));
  const links = [...groups].flatMap(({ factors, signs }) => [...factors, ...signs]);
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
    return { key: keyOf(sorted), observations: sorted, ...(linkedBy ? { linkedBy } : {}) };
  });
}

/** The model as if only what `isKept` says had been recorded; groups that lose nothing stay the same objects. */
export function keepOnly(
  model: Model,
  isKept: (observation: ObservationId) => boolean,
  known: Map<Group, Map<string, Group>>,
): Model {
  const reduced = (group: Group): Group => {
    const factors = group.factors.filter(({ observations }) => observations.every(isKept));
    const signs = group.signs.filter(({ observations }) => observations.every(isKept));
    if (factors.length === group.factors.length && signs.length === group.signs.length) return group;
    const key = [...factors, ...signs].map(({ observations }) => keyOf(observations)).join("|");
    const before = known.get(group) ?? new Map<string, Group>();
    known.set(group, before);
    const found = before.get(key) ?? { ...group, factors, signs };
    before.set(key, found);
    return found;
  };
  return {
    ...model,
    cases: model.cases.map((each) => ({ ...each, groups: each.groups.map(reduced) })),
  };
}
