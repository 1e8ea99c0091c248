import type { PartState } from "#server/domain/part-state.ts";

/** What a part most probably is, to be hatched; `untold` where nothing tells, `doubted` where what was seen or a claim is set aside. */
export type DrawnState = PartState | "untold" | "doubted";

/** The four states, told apart by direction and kind of line alone; dots where nothing tells. */
export const STATE_HATCHING: Readonly<Record<DrawnState, string>> = {
  original: "original",
  later: "later",
  reused: "reused",
  reworked: "reworked",
  untold: "dots",
  doubted: "soft",
};
