import type { ClaimId, TermId } from "#server/domain/ids.ts";
import type { CitedClaimFragment } from "./CitedClaim.graphql.ts";

/** Gives the ids of a report their names: labels of terms, and claims with their citations. */
export interface Glossary {
  /** The label; the id itself where the term is not known here. */
  readonly labelOf: (term: TermId) => string;
  readonly findClaim: (claim: ClaimId) => CitedClaimFragment | undefined;
}
