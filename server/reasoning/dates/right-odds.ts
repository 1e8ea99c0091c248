import type { ClaimId } from "../../domain/ids.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { KnownGraph } from "../known-graph.ts";
import type { Currency } from "./currency.ts";

/** Probability that one claim is right, by its strength; a `?` on its date makes it less so. */
export function claimIsRight(id: ClaimId, graph: KnownGraph, odds: AssumedOdds): number {
  const claim = graph.claimOf(id);
  const right = 1 - odds.wrongClaim[claim.strength];
  return "when" in claim && claim.when !== undefined && graph.yearsOf(claim).doubtful
    ? right * odds.doubtful
    : right;
}

/** Claims taken as right (1) or wrong (0), rather than by their strength. */
export type Given = ReadonlyMap<ClaimId, 0 | 1>;

/** Probability that everything a curve rests on is right. */
export function curveIsRight(
  { claims, assumes }: Pick<Currency, "claims" | "assumes">,
  graph: KnownGraph,
  odds: AssumedOdds,
  given: Given,
): number {
  let right = assumes ? 1 - odds.wrongFallback : 1;
  for (const id of claims) right *= given.get(id) ?? claimIsRight(id, graph, odds);
  return right;
}
