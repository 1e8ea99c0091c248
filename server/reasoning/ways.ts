import type { WaysBlock } from "../domain/report.ts";
import { ALL_YEARS, isEmpty, join, meet, type Span, type Years, yearsToJson } from "../domain/years.ts";
import type { ClosedList } from "./bound.ts";
import type { Check } from "./check.ts";

/** For each closed list met on the way from a check: its ways, and which of them the claimed years leave open (E21). */
export function waysBlocks({ feature, views }: Check, claimed: Span): readonly WaysBlock[] {
  const blocks = new Map<string, { readonly list: ClosedList; readonly years: readonly Years[] }>();
  for (const view of views)
    for (const list of view.reached(feature).flatMap(({ lists }) => lists)) {
      const here = view.yearsOfWays(list, "practice");
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
