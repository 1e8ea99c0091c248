import type { Card, CardWrite } from "../card.ts";
import type { ClaimId } from "../ids.ts";

/** What came of a dispute. Only who brought it up takes it back; the others are for reviewers. */
export const DISPUTE_OUTCOMES = ["stands", "corrected", "retracted", "taken back"] as const;
export type DisputeOutcome = (typeof DISPUTE_OUTCOMES)[number];

export const DISPUTE_STATES = ["open", "ended"] as const;
export type DisputeState = (typeof DISPUTE_STATES)[number];

/** Doubt of an accepted claim. It changes nothing of what the claim does, and is shown wherever the claim is. */
export interface Dispute {
  readonly claim: ClaimId;
  /** What is wrong with the claim, in the words of who doubts it. */
  readonly says: string;
  readonly by: string;
  /** ISO 8601 times in UTC. */
  readonly at: string;
  readonly state: DisputeState;
  /** How it ended. */
  readonly decision?: {
    readonly outcome: DisputeOutcome;
    readonly says: string;
    readonly by: string;
    readonly at: string;
  };
}
export interface KeptDispute extends Dispute {
  readonly id: string;
  readonly version: number;
}

/** The kind of the cards that disputes are kept on. */
export const DISPUTE_CARD = "dispute";

/** What a card says. */
export const disputeOf = ({ id, version, body }: Card): KeptDispute => ({
  id,
  version,
  ...(body as Dispute),
});

/** The card that keeps a dispute from now on. */
export const disputeWrite = (id: string, expectedVersion: number, dispute: Dispute): CardWrite => ({
  ...{ kind: DISPUTE_CARD, id, expectedVersion },
  next: {
    keys: { claim: [dispute.claim], state: [dispute.state], by: [dispute.by] },
    body: dispute,
  },
});

/** The kind of the cards that say how many disputes of a claim are open, by its id: so a list of claims reads them at once. */
export const DISPUTED_CARD = "disputed";
export const openDisputesOf = (card: Card | undefined): number =>
  card === undefined ? 0 : (card.body as { readonly open: number }).open;
export const disputedWrite = (claim: ClaimId, before: Card | undefined, step: 1 | -1): CardWrite => ({
  ...{ kind: DISPUTED_CARD, id: claim, expectedVersion: before?.version ?? 0 },
  next: { keys: {}, body: { open: openDisputesOf(before) + step } },
});
