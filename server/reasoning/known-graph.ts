import type { Claim, Dated, Hardness, NotFoundIn, VoidWhen } from "../domain/claim.ts";
import { compareIds, compareText } from "../domain/compare.ts";
import type { ClaimId, TermId } from "../domain/ids.ts";
import type { Neighbourhood } from "../domain/neighbourhood.ts";
import { type Broader, broaderTerms } from "../domain/region.ts";
import type { Assumptions } from "../domain/report.ts";
import type { TermKind } from "../domain/term.ts";
import { type ClaimYears, yearsOfClaim } from "./claim-years.ts";

/** A neighbourhood made ready for questions. Every list is sorted by id, whatever the order of its input. */
export interface KnownGraph {
  readonly broader: Broader;
  /** Undefined for a term that is not in the neighbourhood. */
  readonly kindOf: (term: TermId) => TermKind | undefined;
  readonly claims: readonly Claim[];
  readonly claimOf: (claim: ClaimId) => Claim;
  /** Claims whose subject is the term. */
  readonly claimsOf: (term: TermId) => readonly Claim[];
  readonly exceptionsOf: (claim: ClaimId) => readonly VoidWhen[];
  /** Claims that have exceptions. */
  readonly excepted: readonly ClaimId[];
  readonly yearsOf: (claim: Dated | NotFoundIn) => ClaimYears;
  /** Forms and kinds of part that some scope names. */
  readonly scopes: { readonly form: readonly TermId[]; readonly part: readonly TermId[] };
  readonly cutAt: ReadonlySet<TermId>;
}

/** Indexes a neighbourhood. Claims that are not accepted are left out. */
export function knowGraph(
  neighbourhood: Pick<Neighbourhood, "terms" | "claims" | "cutAt">,
  assumptions: Assumptions,
): KnownGraph {
  const claims = neighbourhood.claims.filter(({ status }) => status === "accepted").sort(compareIds);
  const byId = new Map(claims.map((claim) => [claim.id, claim]));
  const bySubject = new Map<TermId, Claim[]>();
  const exceptions = new Map<ClaimId, VoidWhen[]>();
  for (const claim of claims)
    if (claim.relation === "void when") addTo(exceptions, claim.of, claim);
    else addTo(bySubject, claim.subject, claim);
  const kinds = new Map(neighbourhood.terms.map(({ id, kind }) => [id, kind]));
  return {
    broader: broaderTerms(neighbourhood.terms),
    kindOf: (term) => kinds.get(term),
    claims,
    claimOf: (claim) => {
      const found = byId.get(claim);
      if (found === undefined) throw new Error(`claim ${claim} is not in the neighbourhood`);
      return found;
    },
    claimsOf: (term) => bySubject.get(term) ?? [],
    exceptionsOf: (claim) => exceptions.get(claim) ?? [],
    excepted: [...exceptions.keys()].filter((claim) => byId.has(claim)).sort(compareText),
    yearsOf: (claim) => yearsOnce(claim, assumptions),
    scopes: { form: scopesBy("form", claims), part: scopesBy("part", claims) },
    cutAt: new Set(neighbourhood.cutAt),
  };
}

/**
 * What was read of claims. They are handed out again and again and never change, so that the date of one is read once for all
 * reports under the same assumptions.
 */
const yearsRead = new WeakMap<Claim, { readonly under: Assumptions; readonly years: ClaimYears }>();

function yearsOnce(claim: Dated | NotFoundIn, assumptions: Assumptions): ClaimYears {
  const { padYear, padCentury } = assumptions;
  const known = yearsRead.get(claim);
  if (known !== undefined && known.under.padYear === padYear && known.under.padCentury === padCentury)
    return known.years;
  const years = yearsOfClaim(claim, assumptions);
  yearsRead.set(claim, { under: assumptions, years });
  return years;
}

const scopesBy = (dimension: "form" | "part", claims: readonly Claim[]): readonly TermId[] =>
  [...new Set(claims.flatMap((claim) => ("scope" in claim ? (claim.scope[dimension] ?? []) : [])))].sort();

function addTo<Key, Value>(lists: Map<Key, Value[]>, key: Key, value: Value): void {
  const list = lists.get(key);
  if (list) list.push(value);
  else lists.set(key, [value]);
}

/** Relations of habit: soft whatever the record says (E7). */
const HABITS: readonly string[] = ["common from", "common until", "current"];

/** How hard a claim bounds. */
export const hardnessOf = (claim: Extract<Claim, { hardness: Hardness }>): Hardness =>
  HABITS.includes(claim.relation) ? "practice" : claim.hardness;
