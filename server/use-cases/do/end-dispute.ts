import { sharesTheHouse } from "../../domain/people/caller.ts";
import { problem } from "../../domain/problem.ts";
import { checkLength, LONGEST_TEXT } from "../../domain/proposals/check-words.ts";
import {
  DISPUTE_CARD,
  type Dispute,
  type DisputeOutcome,
  disputeOf,
  type KeptDispute,
} from "../../domain/proposals/dispute.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller, signed } from "../acting.ts";
import { type Refusal, refusalFrom } from "../refusal.ts";
import { refuseOtherVersion } from "../refuse-other-version.ts";
import { writeDispute } from "./write-dispute.ts";

/** Ends a dispute with a decision and its reason, which stay with it. Only who brought it up takes it back. */
export async function endDispute(
  ports: Acting & { readonly store: Store },
  id: string,
  expectedVersion: number,
  { outcome, says }: { readonly outcome: DisputeOutcome; readonly says: string },
): Promise<KeptDispute | Refusal> {
  const { store, caller } = ports;
  const isTakenBack = outcome === "taken back";
  const action = isTakenBack ? "take back a dispute" : "end a dispute";
  const unable = refuseCaller(ports, action);
  if (unable) return unable;
  const card = await store.card(DISPUTE_CARD, id);
  if (card === undefined)
    return {
      refused: [problem("UNKNOWN_PROPOSAL", `There is no dispute ${id}; look it up at its claim.`, ["id"])],
    };
  const { id: _, version: __, ...before } = disputeOf(card);
  const isShared = caller !== undefined && sharesTheHouse(caller);
  const refusal =
    refuseCaller(ports, action, { by: before.by, isShared }) ??
    refusalFrom([
      ...(before.state === "open"
        ? []
        : [problem("WRONG_STATE", "This dispute has ended, and stays so. Bring up a new one.", ["state"])]),
      ...(says.trim() === "" && !isTakenBack ? [problem("EMPTY_LIST", "Say why it ends so.", ["says"])] : []),
      ...checkLength("says", says, LONGEST_TEXT),
    ]) ??
    refuseOtherVersion("dispute", { id, version: card.version }, expectedVersion);
  if (refusal) return refusal;
  const along = signed(ports, action, id);
  const { by, at } = along.deed;
  const next: Dispute = { ...before, state: "ended", decision: { outcome, says, by, at } };
  return writeDispute(ports, along, { id, version: expectedVersion + 1, ...next }, -1);
}
