import { DISPUTE_CARD } from "../../domain/proposals/dispute.ts";
import { isPrivate } from "../../domain/proposals/proposal.ts";
import type { Store } from "../../ports/store.ts";
import type { Acting } from "../acting.ts";
import { findProposal } from "./find-proposal.ts";

/** What can be talked about under an id, if the caller may see it, and whether everybody in the house sees it too. */
export async function findTalkedAbout(
  ports: Pick<Acting, "caller"> & { readonly store: Store },
  id: string,
): Promise<{ readonly isSeenByAll: boolean } | undefined> {
  if (id.startsWith("dispute.")) return (await ports.store.card(DISPUTE_CARD, id)) && { isSeenByAll: true };
  const proposal = await findProposal(ports, id);
  return proposal && { isSeenByAll: !isPrivate(proposal) };
}
