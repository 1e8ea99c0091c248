import type { Claim } from "../../domain/claim.ts";
import { namedTerms } from "../../domain/named-terms.ts";
import type { Term } from "../../domain/term.ts";
import type { ClaimFilter, TermFilter } from "../../ports/store.ts";

/** Tells whether a term passes a filter. */
export const isTermIn =
  ({ kinds, broader, parts }: TermFilter) =>
  (term: Term): boolean =>
    (kinds === undefined || kinds.includes(term.kind)) &&
    (broader === undefined || term.broader === broader) &&
    (parts === undefined ||
      (term.kind !== "part" && (term.parts ?? []).some((part) => parts.includes(part))));

/** Tells whether a claim passes a filter. */
export const isClaimIn =
  ({ subject, naming, notAbout, source, of, relations }: ClaimFilter) =>
  (claim: Claim): boolean =>
    (subject === undefined || ("subject" in claim && claim.subject === subject)) &&
    (naming === undefined || namedTerms(claim).includes(naming)) &&
    (notAbout === undefined || !("subject" in claim && claim.subject === notAbout)) &&
    (source === undefined ||
      claim.citations.some((citation) => citation.basis === "published" && citation.source === source)) &&
    (of === undefined || (claim.relation === "void when" && of.includes(claim.of))) &&
    (relations === undefined || relations.includes(claim.relation));
