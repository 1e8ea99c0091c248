import { relationOrder } from "../shared/words/relation-words.ts";
import type { YearsByRegionFragment } from "./YearsByRegion.graphql.ts";

export interface RegionGroup {
  readonly name: string;
  readonly claims: readonly YearsByRegionFragment[];
}

/** Labels from the top region down to the claim's own; none for a claim that names no region. */
const pathOf = ({ region }: YearsByRegionFragment): readonly string[] =>
  region ? [...region.broaderTerms.map(({ label }) => label).toReversed(), region.label] : [];

const byRelation = (a: YearsByRegionFragment, b: YearsByRegionFragment) =>
  relationOrder.indexOf(a.relation) - relationOrder.indexOf(b.relation) ||
  (a.years?.begin[0] ?? 0) - (b.years?.begin[0] ?? 0);

/** Claims by region in the order of the tree, the widest first; within one in the order they are read. */
export function groupByRegion(claims: readonly YearsByRegionFragment[]): readonly RegionGroup[] {
  const groups = Map.groupBy(claims, (claim) => pathOf(claim).join("\n"));
  return [...groups]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([path, here]) => ({
      name: path.split("\n").at(-1) || "Everywhere",
      claims: here.toSorted(byRelation),
    }));
}
