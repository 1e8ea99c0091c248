import type { Card, CardWrite } from "../card.ts";

/** What a reviewer says of a proposal. */
export const VERDICTS = ["accept", "ask for changes", "decline", "supersede"] as const;
export type Verdict = (typeof VERDICTS)[number];

/** One word of one reviewer on one version of a proposal; never changed. */
export interface Review {
  readonly proposal: string;
  /** Version of the proposal that was looked at. */
  readonly version: number;
  readonly by: string;
  readonly at: string;
  readonly verdict: Verdict;
  readonly reason: string;
}

/** The kind of the cards that reviews are kept on. */
export const REVIEW_CARD = "review";

/** What a card says. */
export const reviewOf = ({ body }: Card): Review => body as Review;

/** The card of a new review; `id` puts it behind those before it. */
export const reviewWrite = (id: string, review: Review): CardWrite => ({
  ...{ kind: REVIEW_CARD, id, expectedVersion: 0 },
  next: { keys: { proposal: [review.proposal], by: [review.by] }, body: review },
});

/** Conclusions that a change may move before a second reviewer has to agree. */
export const MOVED_BY_ONE = 5;

/** Reviewers who have to agree on a change that moves so many stored conclusions. */
export const reviewersNeeded = (moved: number): 1 | 2 => (moved > MOVED_BY_ONE ? 2 : 1);

/** Persons who agreed on this version, each once. */
export const agreedOn = (reviews: readonly Review[], version: number): readonly string[] => [
  ...new Set(
    reviews.filter((review) => review.version === version && review.verdict === "accept").map(({ by }) => by),
  ),
];
