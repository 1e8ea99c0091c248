import type { Card, CardWrite } from "../card.ts";
import type { RevisionNumber } from "../revision.ts";

/** What a person wants to be told of: a term (a region with all within it), a source, or an examination. */
export interface Follow {
  readonly by: string;
  /** Its id. */
  readonly about: string;
  /** What changed up to this revision is not told. */
  readonly since: RevisionNumber;
  /** ISO 8601 time in UTC. */
  readonly at: string;
}

/** The kind of the cards that say what is followed. */
export const FOLLOW_CARD = "follow";
/** The kind of the cards that say up to which revision somebody has read the digest, one a person. */
export const DIGEST_SEEN_CARD = "digest-seen";
/** What one person can follow. */
export const MOST_FOLLOWED = 500;

/** What a card says. */
export const followOf = ({ body }: Card): Follow => body as Follow;

/** The id of the card of a person and a thing. */
export const followId = (by: string, about: string): string => `${by}~${about}`;

/** The card of something that is followed from now on. */
export const followWrite = (follow: Follow): CardWrite => ({
  ...{ kind: FOLLOW_CARD, id: followId(follow.by, follow.about), expectedVersion: 0 },
  next: { keys: { by: [follow.by], about: [follow.about] }, body: follow },
});

/** The card of how far a person has read. */
export const seenWrite = (by: string, expectedVersion: number, revision: RevisionNumber): CardWrite => ({
  ...{ kind: DIGEST_SEEN_CARD, id: by, expectedVersion },
  next: { keys: {}, body: { revision } },
});

/** How far a person has read. */
export const seenOf = (card: Card | undefined): RevisionNumber | undefined =>
  (card?.body as { readonly revision?: RevisionNumber } | undefined)?.revision;
