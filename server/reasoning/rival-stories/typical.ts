import type { TypicalOf } from "../../domain/claim.ts";
import type { TermId } from "../../domain/ids.ts";
import { isWithin } from "../../domain/region.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { Check, Subject } from "../check.ts";
import type { KnownGraph } from "../known-graph.ts";

/** What a feature says of regions: those it is typical of, by claims that apply to the piece. */
export function regionsTypical(check: Check, graph: KnownGraph): readonly TypicalOf[] {
  return graph
    .claimsOf(check.feature)
    .filter((claim): claim is TypicalOf => claim.relation === "typical of")
    .filter(({ object }) => object.startsWith("region."))
    .filter(({ id }) => check.exceptions.defeatsOf(id, check.seen).length === 0);
}

/**
 * log10 of the probability of what was seen, by region habits alone: where a feature is typical (the nearest claim), and elsewhere. A
 * region within which, or around which, it is typical counts as such; habits travel, so nothing is excluded.
 */
export function typicalWeight(
  { checks, graph }: Subject,
  region: TermId | undefined,
  odds: AssumedOdds,
): ReadonlyMap<string, number> {
  const weights = new Map<string, number>();
  for (const check of checks) {
    if (check.observation === undefined || check.seen === "unseen") continue;
    const claims = regionsTypical(check, graph);
    if (claims.length === 0) continue;
    const here = claims.filter(
      ({ object }) =>
        region !== undefined &&
        (isWithin(region, object, graph.broader) || isWithin(object, region, graph.broader)),
    );
    const p =
      here.length > 0 ? Math.max(...here.map(({ strength }) => odds.typical[strength])) : odds.notTypical;
    const m = odds.misread[check.sureness];
    const seen = (1 - m) * p + m * odds.baseRate;
    weights.set(check.id, Math.log10(check.seen === "present" ? seen : 1 - odds.detect * seen));
  }
  return weights;
}

/** Other regions that what was seen is typical of, those that the most speaks for first; at most `most`. */
export function regionsSuggested(
  { checks, graph, piece }: Subject,
  odds: AssumedOdds,
  most: number,
): readonly TermId[] {
  const claimed = piece.attribution.region;
  const score = new Map<TermId, number>();
  for (const check of checks) {
    if (check.seen !== "present" || check.observation === undefined) continue;
    for (const { object, strength } of regionsTypical(check, graph)) {
      const isClaimed =
        claimed !== undefined &&
        (isWithin(object, claimed, graph.broader) || isWithin(claimed, object, graph.broader));
      if (!isClaimed)
        score.set(object, (score.get(object) ?? 0) + Math.log10(odds.typical[strength] / odds.notTypical));
    }
  }
  return [...score]
    .sort(([a, x], [b, y]) => y - x || (a < b ? -1 : 1))
    .slice(0, most)
    .map(([region]) => region)
    .sort();
}
