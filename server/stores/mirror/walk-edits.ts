import type { Change } from "../../domain/change.ts";
import type { Claim } from "../../domain/claim.ts";
import type { ClaimId, TermId } from "../../domain/ids.ts";

/** What an accepted claim adds to what walks run over. */
export interface ClaimRows {
  readonly claim: ClaimId;
  /** Unless it is an exception. */
  readonly subject?: TermId;
  /** What it leads to, each once, and under which region. */
  readonly targets: readonly TermId[];
  readonly region?: TermId;
  /** The claim it is an exception of. */
  readonly of?: ClaimId;
}

/** What a change does to what walks run over; with the ids of all it touched, as their bodies are others now. */
export interface WalkEdits {
  readonly terms: readonly { readonly term: TermId; readonly stands: boolean; readonly broader?: TermId }[];
  readonly claims: readonly ClaimId[];
  readonly dropped: readonly ClaimRows[];
  readonly added: readonly ClaimRows[];
}

/** Reads a change for what it does to walks. */
export function walkEdits(change: Change): WalkEdits {
  const terms: WalkEdits["terms"][number][] = [];
  const claims: ClaimId[] = [];
  const dropped: ClaimRows[] = [];
  const added: ClaimRows[] = [];
  for (const { kind, before, after } of change) {
    const thing = after ?? before;
    if (thing === undefined) continue;
    if (kind === "term") {
      const broader = after?.broader;
      terms.push({
        term: (thing as { readonly id: TermId }).id,
        stands: after !== undefined,
        ...(broader === undefined ? {} : { broader }),
      });
    } else if (kind === "claim") {
      claims.push((thing as Claim).id);
      if (before?.status === "accepted") dropped.push(rowsOf(before));
      if (after?.status === "accepted") added.push(rowsOf(after));
    }
  }
  return { terms, claims, dropped, added };
}

function rowsOf(claim: Claim): ClaimRows {
  if (claim.relation === "void when") return { claim: claim.id, targets: [], of: claim.of };
  const region = claim.relation === "requires" ? claim.scope.region : undefined;
  return {
    claim: claim.id,
    subject: claim.subject,
    targets: claim.relation === "requires" ? [...new Set(claim.ways.flat())] : [],
    ...(region === undefined ? {} : { region }),
  };
}
