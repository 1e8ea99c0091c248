import type { Claim } from "../domain/claim.ts";
import { compareIds } from "../domain/compare.ts";
import { type DatingPath, type Datings, type DatingsAsk, labelOf } from "../domain/datings.ts";
import type { ClaimId, TermId } from "../domain/ids.ts";
import type { Neighbourhood } from "../domain/neighbourhood.ts";
import { ancestors, broaderTerms } from "../domain/region.ts";
import { boundOfClaim } from "./bound-of-claim.ts";

interface Own {
  readonly leads: { readonly claim: ClaimId; readonly to: TermId }[];
  readonly dates: { readonly claim: ClaimId; readonly isOut: boolean }[];
}

/** All ways of a `DatingsAsk`, read from the neighbourhood of its features and region. */
export function datingsIn(neighbourhood: Neighbourhood, ask: DatingsAsk): Datings {
  const { revision, claims, terms } = neighbourhood;
  const { features, region, claimed, maxDepth } = ask;
  const broader = broaderTerms(terms);
  const above = new Set(region === undefined ? [] : ancestors(region, broader));
  const isAbove = (where: TermId | undefined): boolean =>
    where === undefined || region === undefined || above.has(where);
  const isBelow = (where: TermId | undefined): boolean =>
    where !== undefined && region !== undefined && ancestors(where, broader).includes(region);

  const bySubject = new Map<TermId, Own>();
  const ownOf = (term: TermId): Own => {
    const own = bySubject.get(term) ?? { leads: [], dates: [] };
    bySubject.set(term, own);
    return own;
  };
  const lay = (claim: Claim): void => {
    if (claim.status !== "accepted" || !("scope" in claim)) return;
    const { scope, subject, id } = claim;
    if (claim.relation === "requires" && (isAbove(scope.region) || isBelow(scope.region)))
      for (const to of new Set(claim.ways.flat())) ownOf(subject).leads.push({ claim: id, to });
    const bound = isAbove(scope.region) ? boundOfClaim(claim) : undefined;
    if (bound)
      ownOf(subject).dates.push({ claim: id, isOut: bound[1] < claimed[0] || bound[0] > claimed[1] });
  };
  for (const claim of [...claims].sort(compareIds)) lay(claim);

  let steps = 0;
  const follow = (term: TermId, via: readonly ClaimId[], passed: readonly TermId[], into: DatingPath[]) => {
    if (steps++ >= ask.steps) return;
    const own = bySubject.get(term);
    for (const { claim, isOut } of own?.dates ?? []) into.push({ via, dated: claim, isOut });
    if (via.length === maxDepth) return;
    for (const { claim, to } of own?.leads ?? [])
      if (!passed.includes(to)) follow(to, [...via, claim], [...passed, to], into);
  };
  const found = features.map((feature) => {
    const paths: DatingPath[] = [];
    follow(feature, [], [feature], paths);
    return { feature, label: labelOf(paths), paths };
  });
  return { revision, features: found, isCut: steps > ask.steps };
}
