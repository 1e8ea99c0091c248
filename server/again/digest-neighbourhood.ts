import { sha256 } from "../chain/sha256.ts";
import { canonicalJson } from "../domain/canonical-json.ts";
import type { Claim } from "../domain/claim.ts";
import type { Neighbourhood } from "../domain/neighbourhood.ts";
import type { Term } from "../domain/term.ts";
import { claimAsRead, termAsRead } from "../reasoning/as-read.ts";

/** Values of a store never change: what was hashed once is not hashed again while it is held. */
const ofClaims = new WeakMap<Claim, string>();
const ofTerms = new WeakMap<Term, string>();

/**
 * SHA-256, hex, over what the engine reads of a neighbourhood: accepted claims and terms by their content, and where
 * chains are cut. Neighbourhoods with one digest get one report, but for the revision that it names (K1).
 */
export function digestNeighbourhood({ claims, terms, cutAt }: Neighbourhood): string {
  const parts: string[] = [];
  for (const claim of claims) if (claim.status === "accepted") parts.push(digestClaim(claim));
  parts.push("terms");
  for (const term of terms) parts.push(digestTerm(term));
  parts.push("cut", ...cutAt);
  return sha256(parts.join("\n"));
}

/** Over what the engine reads of one claim. */
export function digestClaim(claim: Claim): string {
  const known = ofClaims.get(claim);
  if (known !== undefined) return known;
  const digest = sha256(canonicalJson(claimAsRead(claim)));
  ofClaims.set(claim, digest);
  return digest;
}

/** Over what the engine reads of one term. */
export function digestTerm(term: Term): string {
  const known = ofTerms.get(term);
  if (known !== undefined) return known;
  const digest = sha256(canonicalJson(termAsRead(term)));
  ofTerms.set(term, digest);
  return digest;
}
