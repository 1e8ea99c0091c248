import { isProblem } from "../../domain/problem.ts";
import {
  DISPUTED_CARD,
  disputedWrite,
  disputeWrite,
  type KeptDispute,
} from "../../domain/proposals/dispute.ts";
import type { Along, Store } from "../../ports/store.ts";
import type { signed } from "../acting.ts";
import type { Refusal } from "../refusal.ts";

/** Tries, where others bring up or end disputes of the same claim in the same moment. */
const TRIES = 4;

/** Writes a dispute as it is from now on together with how many of its claim are open: one more, or one fewer. */
export async function writeDispute(
  { store }: { readonly store: Store },
  along: Along & ReturnType<typeof signed>,
  kept: KeptDispute,
  step: 1 | -1,
): Promise<KeptDispute | Refusal> {
  const { id, version, ...dispute } = kept;
  for (let tried = 1; ; tried++) {
    const counted = await store.card(DISPUTED_CARD, dispute.claim);
    const cards = [disputeWrite(id, version - 1, dispute), disputedWrite(dispute.claim, counted, step)];
    const written = await store.writeCards({ ...along, cards });
    if (!isProblem(written)) return kept;
    const isCountMoved = (await store.card(DISPUTED_CARD, dispute.claim))?.version !== counted?.version;
    if (written.code !== "CHANGED_MEANWHILE" || !isCountMoved || tried === TRIES)
      return { refused: [written] };
  }
}
