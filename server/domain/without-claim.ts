import type { Claim } from "./claim.ts";
import { compareText } from "./compare.ts";
import type { TermId } from "./ids.ts";
import type { Neighbourhood, NeighbourhoodAsk } from "./neighbourhood.ts";
import { overlayChange } from "./overlay-change.ts";
import { broaderTerms, isWithin } from "./region.ts";

/**
 * The neighbourhood as it would be had the claim never been, exactly: taking a claim away reaches nothing new, so the walk
 * can be made again within what was reached. `ask` is what the neighbourhood was asked with, its regions among the seeds.
 */
export function withoutClaim(
  neighbourhood: Neighbourhood,
  claim: Claim,
  { seeds, regions, maxDepth }: Omit<NeighbourhoodAsk, "at">,
): Neighbourhood {
  const broader = broaderTerms(neighbourhood.terms);
  const isAsked = (region: TermId | undefined): boolean =>
    region === undefined ||
    regions.length === 0 ||
    regions.some((asked) => isWithin(asked, region, broader) || isWithin(region, asked, broader));
  const leads = new Map<TermId, TermId[]>();
  for (const each of neighbourhood.claims)
    if (each.relation === "requires" && each.id !== claim.id && isAsked(each.scope.region))
      leads.set(each.subject, [...(leads.get(each.subject) ?? []), ...each.ways.flat()]);

  const depths = new Map<TermId, number>();
  let level: readonly TermId[] = seeds.filter((seed) => neighbourhood.depths.has(seed));
  for (let depth = 0; level.length > 0 && depth <= maxDepth; depth++) {
    for (const term of level) depths.set(term, depth);
    level = [...new Set(level.flatMap((term) => leads.get(term) ?? []))].filter((term) => !depths.has(term));
  }
  const cutAt = [...depths.keys()].filter(
    (term) => depths.get(term) === maxDepth && leads.get(term)?.some((to) => !depths.has(to)),
  );
  const walked = new Map([...depths].sort(([a], [b]) => compareText(a, b)));
  return overlayChange({ ...neighbourhood, depths: walked, cutAt: cutAt.sort(compareText) }, [
    { kind: "claim", before: claim },
  ]);
}
