import type { Card, CardWrite } from "../card.ts";
import type { RevisionNumber } from "../revision.ts";
import type { Seal } from "./seal.ts";

/** What a house says its store held at a time, signed, so that others can keep it and hold it against the store later. */
export interface Checkpoint extends CheckpointFields, Seal {}

export interface CheckpointFields {
  readonly format: "scribeline/checkpoint";
  readonly version: 1;
  /** The newest revision, 0 where there was none, and its hash: 64 zeros then. */
  readonly revision: RevisionNumber;
  readonly head: string;
  /** Number of the newest write of the ledger and its hash, in the same way. */
  readonly sequence: number;
  readonly ledger: string;
  /** ISO 8601 time in UTC. */
  readonly at: string;
}

/** The kind of the cards that checkpoints are kept on. */
export const CHECKPOINT_CARD = "checkpoint";

/** What a card says. */
export const checkpointOf = ({ body }: Card): Checkpoint => body as Checkpoint;

/** The card of a new checkpoint; cards of checkpoints stand in the order of the writes they tell of. */
export const checkpointWrite = (suffix: string, checkpoint: Checkpoint): CardWrite => ({
  ...{ kind: CHECKPOINT_CARD, expectedVersion: 0 },
  id: `checkpoint.${String(checkpoint.sequence).padStart(12, "0")}-${suffix}`,
  next: { keys: { revision: [String(checkpoint.revision)] }, body: checkpoint },
});
