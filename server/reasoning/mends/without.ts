import type { ClaimId } from "../../domain/ids.ts";
import type { KnownGraph } from "../known-graph.ts";

/** A graph as if these claims had been rejected (R5 of the mends: the preview of an edit knows it the same way). */
export function withoutClaims(graph: KnownGraph, rejected: ReadonlySet<ClaimId>): KnownGraph {
  const stays = ({ id }: { readonly id: ClaimId }): boolean => !rejected.has(id);
  return {
    ...graph,
    claims: graph.claims.filter(stays),
    claimsOf: (term) => graph.claimsOf(term).filter(stays),
    exceptionsOf: (claim) => graph.exceptionsOf(claim).filter(stays),
  };
}
