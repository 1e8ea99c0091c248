import { DISPUTE_CARD, disputeOf, type KeptDispute } from "../../domain/proposals/dispute.ts";
import type { Store } from "../../ports/store.ts";

/** A dispute, if there is one. Everybody in the house sees it. */
export async function findDispute(
  { store }: { readonly store: Store },
  id: string,
): Promise<KeptDispute | undefined> {
  const card = await store.card(DISPUTE_CARD, id);
  return card && disputeOf(card);
}
