import type { Hardness } from "../domain/claim.ts";
import type { TermId } from "../domain/ids.ts";
import type { WaysBlock } from "../domain/report.ts";
import { ALL_YEARS, isEmpty, join, meet, type Span, type Years, yearsToJson } from "../domain/years.ts";
import { type ClosedList, countsFor } from "./bound.ts";
import type { Check } from "./check.ts";
import type { View } from "./view.ts";

/** The years of the ways of a list at one place: the subject's own years with those of all terms of the way. */
export function yearsOfWays(view: View, { claim }: ClosedList, level: Hardness): readonly Years[] {
  const own = view
    .resolve(claim.subject)
    .bounds.filter(({ hardness }) => countsFor(hardness, level))
    .reduce<Years>((years, { outer }) => meet(years, outer), ALL_YEARS);
  const yearsOf = (term: TermId): Years =>
    level === "physical" ? view.sets(term).possible.outer : view.sets(term).usual.outer;
  return claim.ways.map((way) => way.map(yearsOf).reduce(meet, own));
}

/** For each closed list met on the way from a check: its ways, and which of them the claimed years leave open (E21). */
export function waysBlocks({ feature, views }: Check, claimed: Span): readonly WaysBlock[] {
  const blocks = new Map<string, { readonly list: ClosedList; readonly years: readonly Years[] }>();
  for (const view of views)
    for (const list of view.reached(feature).flatMap(({ lists }) => lists)) {
      const here = yearsOfWays(view, list, "practice");
      const before = blocks.get(list.claim.id)?.years;
      blocks.set(list.claim.id, {
        list,
        years: before ? before.map((years, way) => join(years, here[way] ?? ALL_YEARS)) : here,
      });
    }
  return [...blocks.values()].map(({ list: { claim }, years }) => ({
    claim: claim.id,
    term: claim.subject,
    ways: claim.ways.map((terms, way) => {
      const found = years[way] ?? ALL_YEARS;
      return { terms, open: !isEmpty(meet(found, [claimed])), years: yearsToJson(found) };
    }),
  }));
}
