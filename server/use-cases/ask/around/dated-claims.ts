import type { Claim, Dated, NotFoundIn } from "../../../domain/claim.ts";
import { compareText, firstDifference } from "../../../domain/compare.ts";
import { readDating } from "../../../domain/dating.ts";
import type { TermId } from "../../../domain/ids.ts";
import { isProblem } from "../../../domain/problem.ts";
import { type Broader, isWithin } from "../../../domain/region.ts";
import { roleOfRelation } from "../../../domain/role-of-relation.ts";
import type { Year } from "../../../domain/years.ts";

type DatedClaim = Dated | NotFoundIn;

/** Claims with a date, by subject, the one that begins first before the others. */
export function datedClaims(claims: readonly Claim[]): ReadonlyMap<TermId, readonly DatedClaim[]> {
  const dated = claims.filter((claim): claim is DatedClaim => "when" in claim && claim.when !== undefined);
  const sorted = dated
    .map((claim) => ({ claim, first: firstYear(claim) }))
    .sort((a, b) => firstDifference(Math.sign(a.first - b.first) || 0, compareText(a.claim.id, b.claim.id)))
    .map(({ claim }) => claim);
  return Map.groupBy(sorted, ({ subject }) => subject);
}

/** The first year a claim can mean; where nobody states it the last, and none is beyond all years. */
export function firstYear(claim: DatedClaim): Year {
  const dating =
    claim.when === undefined ? undefined : readDating(claim.when, roleOfRelation(claim.relation));
  if (dating === undefined || isProblem(dating)) return Number.POSITIVE_INFINITY;
  return [dating.begin[0], dating.end[1]].find(Number.isFinite) ?? Number.POSITIVE_INFINITY;
}

/** Those that bear on a region come first where it is one that is looked around from. */
export const nearerFirst = (
  claims: readonly DatedClaim[],
  region: TermId,
  broader: Broader,
): readonly DatedClaim[] => {
  const isHere = ({ scope }: DatedClaim) =>
    scope.region !== undefined && isWithin(scope.region, region, broader);
  return [...claims.filter(isHere), ...claims.filter((claim) => !isHere(claim))];
};
