import { type Problem, problem } from "../../domain/problem.ts";
import { type KeptProposal, PROPOSAL_CARD, proposalOf } from "../../domain/proposals/kept-proposal.ts";
import { isPrivate } from "../../domain/proposals/proposal.ts";
import type { Store } from "../../ports/store.ts";
import type { Acting } from "../acting.ts";

/** A proposal, if there is one that the caller may see: what was never handed in is for whoever made it. */
export async function findProposal(
  { store, caller }: Pick<Acting, "caller"> & { readonly store: Store },
  id: string,
): Promise<KeptProposal | undefined> {
  const card = await store.card(PROPOSAL_CARD, id);
  const proposal = card && proposalOf(card);
  return proposal && isPrivate(proposal) && proposal.by !== caller?.id ? undefined : proposal;
}

/** For a proposal that was not found. */
export const unknownProposal = (id: string): Problem =>
  problem(
    "UNKNOWN_PROPOSAL",
    `There is no proposal ${id}, or it is somebody's draft; look it up in the list.`,
  );
