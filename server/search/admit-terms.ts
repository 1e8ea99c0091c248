import type { Claim } from "../domain/claim.ts";
import { EVENT_RELATIONS, PERIOD_RELATIONS } from "../domain/claim.ts";
import type { TermId } from "../domain/ids.ts";
import { isProblem } from "../domain/problem.ts";
import { readDating } from "../domain/read-dating.ts";
import { roleOfRelation } from "../domain/role-of-relation.ts";
import type { Term } from "../domain/term.ts";
import type { Span } from "../domain/years.ts";
import type { SearchFilter } from "../ports/store.ts";

/** Where and when a claim speaks of its subject. */
interface Place {
  readonly regions: readonly TermId[];
  /** Of a dated claim: from the first year its date can mean to the last. */
  readonly years?: Span;
}

/**
 * Makes tests out of filters, for the terms and claims of one revision. The claims are asked for once, when a filter
 * first needs them; those that are not accepted count for nothing.
 */
export function admitTerms(
  terms: ReadonlyMap<TermId, Term>,
  readClaims: () => Iterable<Claim>,
): (filter: SearchFilter) => (term: Term) => boolean {
  let places: ReadonlyMap<TermId, readonly Place[]> | undefined;

  /** A term with all above and below it. */
  const kinOf = (id: TermId): ReadonlySet<TermId> => {
    const above = lineOf(terms, id);
    const below = [...terms.keys()].filter((other) => lineOf(terms, other).has(id));
    return new Set([...above, ...below]);
  };

  return ({ kinds, broader, part, region, years }) => {
    const parts = part === undefined ? undefined : kinOf(part);
    const regions = region === undefined ? undefined : kinOf(region);
    if (regions !== undefined || years !== undefined) places ??= placesOf(readClaims());
    const isMet = (place: Place): boolean =>
      (regions === undefined || place.regions.some((named) => regions.has(named))) &&
      (years === undefined || (place.years !== undefined && doMeet(place.years, years)));
    return (term) =>
      (kinds === undefined || kinds.includes(term.kind)) &&
      (broader === undefined || term.broader === broader) &&
      (parts === undefined || (term.kind !== "form" && (term.parts ?? []).some((each) => parts.has(each)))) &&
      ((regions === undefined && years === undefined) || (places?.get(term.id) ?? []).some(isMet));
  };
}

/** A term and those above it. */
function lineOf(terms: ReadonlyMap<TermId, Term>, id: TermId): ReadonlySet<TermId> {
  const line = new Set<TermId>();
  for (
    let next: TermId | undefined = id;
    next !== undefined && !line.has(next);
    next = terms.get(next)?.broader
  )
    line.add(next);
  return line;
}

/** Whether years of a claim are among the years asked for; of years turned round there are none. */
const doMeet = (claimed: Span, asked: Span): boolean =>
  asked[0] <= asked[1] && claimed[0] <= asked[1] && asked[0] <= claimed[1];

function placesOf(claims: Iterable<Claim>): ReadonlyMap<TermId, readonly Place[]> {
  const places = new Map<TermId, Place[]>();
  for (const claim of claims) {
    if (claim.status !== "accepted" || claim.relation === "void when") continue;
    const years = outerYears(claim);
    const place = { regions: regionsOf(claim), ...(years === undefined ? {} : { years }) };
    const known = places.get(claim.subject);
    if (known) known.push(place);
    else places.set(claim.subject, [place]);
  }
  return places;
}

function regionsOf(claim: Claim): readonly TermId[] {
  if (claim.relation === "spread to") return [claim.from, claim.to];
  const scoped = "scope" in claim && claim.scope.region ? [claim.scope.region] : [];
  return claim.relation === "confined to" ? [...scoped, ...claim.regions] : scoped;
}

const DATED: readonly string[] = [...EVENT_RELATIONS, ...PERIOD_RELATIONS];

function outerYears(claim: Claim): Span | undefined {
  if (!DATED.includes(claim.relation) || !("when" in claim) || claim.when === undefined) return undefined;
  const dating = readDating(claim.when, roleOfRelation(claim.relation));
  return isProblem(dating) ? undefined : [dating.begin[0], dating.end[1]];
}
