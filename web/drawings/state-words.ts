import type { PartState } from "#server/domain/part-state.ts";

/** What each state of a part is, as legends name it. */
export const STATE_WORDS: Readonly<Record<PartState, string>> = {
  original: "of the first making",
  later: "later than the piece",
  reused: "from an earlier piece",
  reworked: "of the first making, worked over since",
};
