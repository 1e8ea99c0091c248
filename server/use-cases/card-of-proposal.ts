import type { CardWrite } from "../domain/card.ts";
import { proposalWrite, regionsOf } from "../domain/proposals/kept-proposal.ts";
import type { Proposal } from "../domain/proposals/proposal.ts";
import { ancestors, broaderTerms } from "../domain/region.ts";
import type { Store } from "../ports/store.ts";

/** The card that keeps a proposal from now on, found by its regions and all that lie above them too. */
export async function cardOfProposal(
  { store }: { readonly store: Store },
  id: string,
  expectedVersion: number,
  proposal: Proposal,
): Promise<CardWrite> {
  const regions = regionsOf(proposal);
  // Regions with what they lie within come in one.
  const { terms } = await store.neighbourhood({ seeds: regions, regions: [], maxDepth: 0 });
  const broader = broaderTerms(terms);
  const above = regions.flatMap((region) => ancestors(region, broader));
  return proposalWrite(id, expectedVersion, proposal, [...new Set(above)].sort());
}
