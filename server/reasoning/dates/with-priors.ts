import type { Part } from "../../domain/examination.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { Subject } from "../check.ts";
import type { Group, Model } from "./model.ts";
import { statePrior } from "./state-prior.ts";

/** Odds of what a part is before anything is seen on it. All others say something of what was seen. */
const PRIORS: readonly (keyof AssumedOdds)[] = [
  "states",
  "otherwise",
  "ofParts",
  "reworked",
  "reuseYears",
  "datePrior",
  "rivals",
  "madeToDeceive",
];

/** Whether what was seen says the same under both odds, priors aside. */
export const seesAlike = (a: AssumedOdds, b: AssumedOdds): boolean =>
  (Object.keys({ ...a, ...b }) as (keyof AssumedOdds)[]).every(
    (key) => PRIORS.includes(key) || a[key] === b[key],
  );

/** A model with the states of its groups as probable beforehand as under other odds that see alike; what was seen is not read again. */
export function withPriors(model: Model, { piece, graph }: Subject, odds: AssumedOdds): Model {
  const byId = new Map(piece.parts.map((part) => [part.id, part]));
  const known = new Map<Group, Group>();
  const again = (group: Group): Group => {
    const before = known.get(group);
    if (before) return before;
    const parts = group.parts.map((id) => byId.get(id) as Part);
    const found = { ...group, prior: statePrior(parts, odds, graph.broader) };
    known.set(group, found);
    return found;
  };
  return {
    ...model,
    reuseYears: odds.reuseYears,
    cases: model.cases.map((each) => ({ ...each, groups: each.groups.map(again) })),
  };
}
