import type { ClaimId } from "../../domain/ids.ts";
import { problem } from "../../domain/problem.ts";
import { checkLength, LONGEST_TEXT } from "../../domain/proposals/check-words.ts";
import {
  DISPUTED_CARD,
  type Dispute,
  type KeptDispute,
  openDisputesOf,
} from "../../domain/proposals/dispute.ts";
import type { NewSuffix } from "../../ports/ids.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller, signed } from "../acting.ts";
import { type Refusal, refusalFrom } from "../refusal.ts";
import { writeDispute } from "./write-dispute.ts";

/** Disputes of one claim that can stand open at once; who has the same doubt talks there. */
export const MOST_OPEN_DISPUTES = 20;

/** Attaches a doubt to an accepted claim. It lowers nothing by itself. */
export async function disputeClaim(
  ports: Acting & { readonly store: Store; readonly newSuffix: NewSuffix },
  claim: ClaimId,
  says: string,
): Promise<KeptDispute | Refusal> {
  const unable = refuseCaller(ports, "dispute a claim");
  if (unable) return unable;
  const found = (await ports.store.claims([claim])).get(claim);
  const open = openDisputesOf(await ports.store.card(DISPUTED_CARD, claim));
  const refusal = refusalFrom([
    ...(found?.status === "accepted"
      ? []
      : [
          problem(
            "UNKNOWN_CLAIM",
            `There is no accepted claim ${claim}; only what is accepted is disputed.`,
            ["claim"],
          ),
        ]),
    ...(says.trim() === ""
      ? [problem("EMPTY_LIST", "Say what is wrong with the claim, and how you know.", ["says"])]
      : []),
    ...checkLength("says", says, LONGEST_TEXT),
    ...(open < MOST_OPEN_DISPUTES
      ? []
      : [
          problem(
            "TRY_LATER",
            "So many disputes of this claim are open that another one helps nobody; join one of them.",
          ),
        ]),
  ]);
  if (refusal) return refusal;
  const at = ports.now();
  const id = `dispute.${at.slice(0, 10)}-${ports.newSuffix()}`;
  const along = signed(ports, "dispute claim", id);
  const dispute: Dispute = { claim, says, by: along.deed.by, at, state: "open" };
  return writeDispute(ports, along, { id, version: 1, ...dispute }, 1);
}
