import type { Change } from "./change.ts";
import type { Claim } from "./claim.ts";
import { compareIds } from "./compare.ts";
import type { ClaimId, TermId } from "./ids.ts";
import { namedTerms } from "./named-terms.ts";
import type { Neighbourhood } from "./neighbourhood.ts";
import type { Term } from "./term.ts";

/**
 * A neighbourhood as it would be after the change, from the neighbourhood and the change alone: [G24] of
 * docs/spec/2-graph.md. Claims are put where their subject was already reached, exceptions where their claim is there.
 * What a put or dropped `requires` claim newly reaches or no longer reaches is not worked out (depths and `cutAt`
 * stay), nor is anything fetched (terms named anew, exceptions of a claim accepted anew): ask the store again where that
 * matters. `before` is not compared with what stands.
 */
export function overlayChange(neighbourhood: Neighbourhood, change: Change): Neighbourhood {
  const claims = claimsAfter(neighbourhood, change);
  const wanted = [...neighbourhood.depths.keys(), ...claims.flatMap(namedTerms)];
  return { ...neighbourhood, claims, terms: termsAfter(neighbourhood, change, wanted) };
}

function claimsAfter({ claims, depths }: Neighbourhood, change: Change): readonly Claim[] {
  const pool = new Map<ClaimId, Claim>(claims.map((claim) => [claim.id, claim]));
  for (const edit of change) {
    if (edit.kind !== "claim") continue;
    if (edit.before) pool.delete(edit.before.id);
    if (edit.after?.status === "accepted") pool.set(edit.after.id, edit.after);
  }
  const kept = new Map<ClaimId, Claim>();
  for (const claim of pool.values())
    if ("subject" in claim && depths.has(claim.subject)) kept.set(claim.id, claim);
  // A map iterated over while it grows: the exceptions found are asked for exceptions of their own.
  for (const id of kept.keys())
    for (const claim of pool.values()) if ("of" in claim && claim.of === id) kept.set(claim.id, claim);
  return [...kept.values()].sort(compareIds);
}

function termsAfter({ terms }: Neighbourhood, change: Change, wanted: readonly TermId[]): readonly Term[] {
  const pool = new Map<TermId, Term>(terms.map((term) => [term.id, term]));
  for (const edit of change) {
    if (edit.kind !== "term") continue;
    if (edit.before) pool.delete(edit.before.id);
    if (edit.after) pool.set(edit.after.id, edit.after);
  }
  const kept = new Set<Term>();
  for (const id of wanted)
    for (let term = pool.get(id); term && !kept.has(term); term = term.broader && pool.get(term.broader))
      kept.add(term);
  return [...kept].sort(compareIds);
}
