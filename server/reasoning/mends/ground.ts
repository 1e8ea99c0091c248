import type { Hardness } from "../../domain/claim.ts";
import { compareText } from "../../domain/compare.ts";
import type { ClaimId, TermId } from "../../domain/ids.ts";
import { isAllYears } from "../../domain/years.ts";
import type { Held } from "../atoms.ts";
import { countsFor } from "../bound.ts";
import { readSubject, type Subject } from "../check.ts";
import { type Resolved, resolve } from "../resolve.ts";
import { type Window, windowsAt } from "../rule-outs/windows.ts";
import type { View } from "../view.ts";
import { type Item, Items } from "./items.ts";
import type { Prices } from "./prices.ts";
import { type Puzzle, puzzleOf } from "./puzzle.ts";
import { withoutClaims } from "./without.ts";

/** A piece of one level as puzzles, on the graph as it stands and on what is left of it when something is given up. */
export interface Ground {
  readonly items: Items;
  /** One puzzle a place, in their order, with the proofs that there are when these are given up (M8). */
  readonly puzzles: (givenUp: readonly Item[]) => readonly Puzzle[];
  /** What of a set brings something back that did not count before. */
  readonly reviving: (givenUp: readonly Item[]) => readonly Item[];
  /** Some proofs were cut at the budget. */
  readonly isCut: boolean;
}

/** Reads a piece for one level: `physical` what is possible, `practice` what is usual. */
export function groundOf(subject: Subject, level: Hardness, prices: Prices): Ground {
  const items = new Items();
  const asItStands = puzzlesOf(subject, level, prices, items, []);
  const known = new Map<string, readonly Puzzle[]>([["", asItStands.puzzles]]);
  return {
    items,
    isCut: asItStands.isCut,
    puzzles: (givenUp) => {
      const key = givenUp.join(" ");
      const found =
        known.get(key) ??
        puzzlesOf(subjectWithout(subject, givenUp, items), level, prices, items, givenUp).puzzles;
      known.set(key, found);
      return found;
    },
    reviving: revivingOf(subject, level, items),
  };
}

function puzzlesOf(
  subject: Subject,
  level: Hardness,
  prices: Prices,
  items: Items,
  givenUp: readonly Item[],
): { readonly puzzles: readonly Puzzle[]; readonly isCut: boolean } {
  const { piece, parts, places, claimed } = subject;
  const groups = [...Map.groupBy(piece.parts.map(({ id }) => id).sort(compareText), parts.groupOf).values()];
  const without = new Set(givenUp.map((item) => items.key(item)));
  const isGone = ({ atom }: Held): boolean =>
    (atom.kind === "assumption" && without.has(`assumption:${atom.assumption}`)) ||
    (atom.kind === "rivals" && without.has(`rivals:${atom.claims.join(" ")}`));
  let isCut = false;
  const puzzles = places.map((_, place) => {
    const { windows, torn, cut } = windowsAt(place, subject);
    isCut ||= cut.length > 0;
    const counting = (all: readonly Window[]): readonly Window[] =>
      all.filter(({ hardness, held }) => countsFor(hardness, level) && !held.some(isGone));
    const question = {
      windows: counting(windows),
      torn: torn.map((part) => ({ places: part.places.map(counting) })),
      ...{ groups, separate: piece.separate, claimed, examined: piece.examined },
    };
    return puzzleOf(question, prices, items);
  });
  return { puzzles, isCut };
}

/** The claims that a set gives up, those of rivals one by one. */
const claimsIn = (givenUp: readonly Item[], items: Items): readonly ClaimId[] =>
  givenUp.flatMap((item) => {
    const what = items.givenUp(item);
    return what.kind === "claim" ? [what.claim] : what.kind === "rivals" ? what.claims : [];
  });

/** The piece read again on the graph without the claims of a set, and without what was misread. The places stay those of the graph. */
export function subjectWithout(subject: Subject, givenUp: readonly Item[], items: Items): Subject {
  const { piece, graph, assumptions } = subject;
  const misread = new Set(
    givenUp.flatMap((item) => {
      const what = items.givenUp(item);
      return what.kind === "misread" ? [what.observation] : [];
    }),
  );
  const left = { ...piece, observations: piece.observations.filter(({ id }) => !misread.has(id)) };
  return readSubject(left, withoutClaims(graph, new Set(claimsIn(givenUp, items))), assumptions, graph);
}

/**
 * What a claim says of its subject hangs on the other claims of that subject and on nothing else, so only these are looked at: where none
 * of them bounds anything new without the claims given up, nothing is brought back. A sighting that voids a claim brings that claim
 * back when it was misread.
 */
function revivingOf(subject: Subject, level: Hardness, items: Items): Ground["reviving"] {
  const { graph, checks } = subject;
  const voiding = new Set(
    checks.flatMap(({ exceptions }) => exceptions.key.split(" ").map((met) => met.split("=")[1] ?? "")),
  );
  const views = new Map<TermId, Set<View>>();
  for (const check of checks)
    for (const view of check.views)
      for (const { term } of view.reached(check.feature))
        views.set(term, (views.get(term) ?? new Set()).add(view));
  const subjectsOf = (item: Item): readonly TermId[] =>
    claimsIn([item], items).flatMap((id) => {
      const claim = graph.claimOf(id);
      return "subject" in claim ? [claim.subject] : [];
    });
  const known = new Map<string, boolean>();
  /** Whether something new bounds a term when these claims of it are gone. */
  const bringsBack = (term: TermId, claims: readonly ClaimId[]): boolean => {
    const key = `${term} ${claims.join(" ")}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    const left = withoutClaims(graph, new Set(claims));
    const brings = [...(views.get(term) ?? [])].some((view) => {
      const before = boundsIn(view.resolve(term), level);
      return [...boundsIn(resolve(term, view.context, left), level)].some((bound) => !before.has(bound));
    });
    known.set(key, brings);
    return brings;
  };
  return (givenUp) => {
    const bySubject = new Map<TermId, Item[]>();
    const reviving = new Set<Item>();
    for (const item of givenUp) {
      const what = items.givenUp(item);
      if (what.kind === "misread" && voiding.has(what.observation)) reviving.add(item);
      for (const term of new Set(subjectsOf(item)))
        bySubject.set(term, [...(bySubject.get(term) ?? []), item]);
    }
    for (const [term, of] of bySubject)
      if (bringsBack(term, claimsIn(of, items))) for (const item of of) reviving.add(item);
    return [...reviving].sort((a, b) => a - b);
  };
}

/** Everything that bounds a term at one level, each as a text. */
const boundsIn = ({ bounds, lists }: Resolved, level: Hardness): ReadonlySet<string> =>
  new Set([
    ...bounds
      .filter(({ hardness, outer }) => countsFor(hardness, level) && !isAllYears(outer))
      .map(({ held, outer }) => `${held.map(({ key }) => key).join("|")} ${outer.join(";")}`),
    ...lists.filter(({ hardness }) => countsFor(hardness, level)).map(({ claim }) => `list ${claim.id}`),
  ]);
