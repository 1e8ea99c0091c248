import type { Hardness } from "../domain/claim.ts";
import { ALL_YEARS, isEmpty, join, meet, NO_YEARS, sameYears, type Years } from "../domain/years.ts";
import { compareHoldings, type Held, type Holding, heldClaims, holdingBoth } from "./atoms.ts";
import { countsFor } from "./bound.ts";
import type { Check } from "./check.ts";
import { inOneGo, type Steps } from "./in-one-go.ts";
import { eitherOf, type Proof, type Proofs, withCase } from "./proofs.ts";
import { yearsAlgebra } from "./years-under.ts";

/** What a support has to bring about: years that miss the claimed ones, or exactly the years found. */
export type Goal = { readonly miss: Years } | { readonly give: Years };

const reaches = (years: Years, goal: Goal): boolean =>
  "miss" in goal ? isEmpty(meet(years, goal.miss)) : sameYears(years, goal.give);

/** Proofs up to this many are tried three at a time. */
const TRIED_BY_THREES = 16;

/**
 * An irredundant support of what was found of a check, over all its places (E19): the best of one, two or three proofs; where that
 * does not do, whatever is left when claims are given up one by one as long as the goal is still reached.
 */
export const findSupport = (check: Check, level: Hardness, goal: Goal): Holding =>
  inOneGo(findSupportIn(inOneGo(proofsOverPlaces(check)), check, level, goal));

/** All proofs of what is found of a check, over all its places. A step is a place. */
export function* proofsOverPlaces({ views, feature }: Check): Steps<Proofs> {
  if (views.length < 2) return eitherOf(views.map((view) => view.proofs(feature)));
  let found = eitherOf([]);
  for (const view of views) {
    found = withCase(found, view.proofs(feature));
    yield;
  }
  return found;
}

/** The same, from these proofs. A step is a proof that is tried with others, or a claim that is given up. */
export function* findSupportIn(
  { proofs }: Proofs,
  check: Check,
  level: Hardness,
  goal: Goal,
): Steps<Holding> {
  const counting = proofs.filter(({ hardness }) => countsFor(hardness, level));
  return (yield* bestOf(counting, goal)) ?? (yield* whatIsLeft(check, level, goal));
}

function* bestOf(proofs: readonly Proof[], goal: Goal): Steps<Holding | undefined> {
  let best: Holding | undefined;
  const offer = (years: Years, held: () => Holding): void => {
    if (!reaches(years, goal)) return;
    const found = held();
    if (best === undefined || compareHoldings(found, best) < 0) best = found;
  };
  for (const [i, one] of proofs.entries()) {
    yield;
    offer(one.years, () => one.held);
    for (const [j, two] of proofs.slice(i + 1).entries()) {
      const both = meet(one.years, two.years);
      offer(both, () => holdingBoth(one.held, two.held));
      if (proofs.length > TRIED_BY_THREES) continue;
      for (const three of proofs.slice(i + j + 2))
        offer(meet(both, three.years), () => holdingBoth(holdingBoth(one.held, two.held), three.held));
    }
  }
  return best;
}

function* whatIsLeft(check: Check, level: Hardness, goal: Goal): Steps<Holding> {
  const all = new Map<string, Held>();
  for (const { bounds, lists } of check.views.flatMap((view) => view.reached(check.feature))) {
    for (const { held } of bounds) for (const atom of held) all.set(atom.key, atom);
    for (const { claim } of lists) all.set(heldClaims([claim.id]).key, heldClaims([claim.id]));
  }
  const kept = new Set(all.keys());
  for (const key of [...kept].sort().reverse()) {
    yield;
    kept.delete(key);
    if (!reaches(yearsFrom(check, level, kept), goal)) kept.add(key);
  }
  return [...kept].sort().map((key) => all.get(key) as Held);
}

/** The years of a check over all its places from some atoms alone. */
function yearsFrom(check: Check, level: Hardness, kept: ReadonlySet<string>): Years {
  const algebra = yearsAlgebra(
    ({ held, hardness, outer }) =>
      countsFor(hardness, level) && held.every(({ key }) => kept.has(key)) ? outer : ALL_YEARS,
    ({ claim, hardness }) => countsFor(hardness, level) && kept.has(heldClaims([claim.id]).key),
  );
  return check.views.map((view) => view.under(algebra)(check.feature)).reduce(join, NO_YEARS);
}
