import { COMMENT_CARD, commentOf, type KeptComment } from "../../domain/proposals/comment.ts";
import {
  DISPUTE_CARD,
  type DisputeState,
  disputeOf,
  type KeptDispute,
} from "../../domain/proposals/dispute.ts";
import { REVIEW_CARD, type Review, reviewOf } from "../../domain/proposals/review.ts";
import { LARGEST_PAGE, type Page, type PageAsk, type Store } from "../../ports/store.ts";
import type { Acting } from "../acting.ts";
import { findTalkedAbout } from "./find-talked-about.ts";

type Ports = { readonly store: Store };

/** What was said of a proposal or a dispute, oldest first. Whoever asks may see that. */
export async function listComments({ store }: Ports, on: string, page: PageAsk): Promise<Page<KeptComment>> {
  const found = await store.listCards({ kind: COMMENT_CARD, key: { name: "on", value: on } }, page, "up");
  return { ...found, rows: found.rows.map(commentOf) };
}

/** Comments that call the caller, newest first, on what the caller may see. */
export async function listMentions(
  ports: Ports & Pick<Acting, "caller">,
  first: number,
): Promise<readonly KeptComment[]> {
  const key = { name: "mentions", value: ports.caller?.id ?? "" };
  const { rows } = await ports.store.listCards({ kind: COMMENT_CARD, key }, { first }, "down");
  const comments = rows.map(commentOf);
  const seen = await Promise.all(comments.map(({ on }) => findTalkedAbout(ports, on)));
  return comments.filter((_, i) => seen[i] !== undefined);
}

/** The reviews of a proposal, oldest first; of very many the first. */
export async function listReviews({ store }: Ports, proposal: string): Promise<readonly Review[]> {
  const key = { name: "proposal", value: proposal };
  const { rows } = await store.listCards({ kind: REVIEW_CARD, key }, { first: LARGEST_PAGE }, "up");
  return rows.map(reviewOf);
}

/** Disputes of all claims, newest first. */
export async function listDisputes(
  { store }: Ports,
  state: DisputeState,
  page: PageAsk,
): Promise<Page<KeptDispute>> {
  const found = await store.listCards(
    { kind: DISPUTE_CARD, key: { name: "state", value: state } },
    page,
    "down",
  );
  return { ...found, rows: found.rows.map(disputeOf) };
}

/** Disputes of one claim, newest first. */
export async function listDisputesOf({ store }: Ports, claim: string): Promise<readonly KeptDispute[]> {
  const { rows } = await store.listCards(
    { kind: DISPUTE_CARD, key: { name: "claim", value: claim } },
    { first: LARGEST_PAGE },
    "down",
  );
  return rows.map(disputeOf);
}
