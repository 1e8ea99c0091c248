import type { Card, CardWrite } from "../card.ts";

/** Something that somebody said of a proposal or of a dispute; never changed. */
export interface Comment {
  /** Id of what it is about. */
  readonly on: string;
  readonly text: string;
  readonly by: string;
  /** ISO 8601 time in UTC. */
  readonly at: string;
  /** The comment that it answers. */
  readonly answers?: string;
  /** Persons whom it calls. */
  readonly mentions: readonly string[];
}
export interface KeptComment extends Comment {
  readonly id: string;
}

/** Comments on one proposal or dispute at most. */
export const MOST_COMMENTS = 500;

/** The kind of the cards that comments are kept on. */
export const COMMENT_CARD = "comment";

/** What a card says. */
export const commentOf = ({ id, body }: Card): KeptComment => ({ id, ...(body as Comment) });

/** The card of a new comment; ids are in the order of their times. */
export const commentWrite = (id: string, comment: Comment): CardWrite => ({
  ...{ kind: COMMENT_CARD, id, expectedVersion: 0 },
  next: { keys: { on: [comment.on], mentions: comment.mentions }, body: comment },
});
