import type { StateOdds } from "./weighing/odds.ts";

/** finding: what an observation, or a thing claimed, says. rule-out: what cannot be or is unusual. part: the worst on a part. state: what a part most probably is. record: whether the piece can be examined. */
export const SHIFT_KINDS = ["finding", "rule-out", "part", "state", "record"] as const;
export type ShiftKind = (typeof SHIFT_KINDS)[number];

/** One thing that is said otherwise than before. */
export interface ShiftLine {
  readonly kind: ShiftKind;
  /** The strip to look at, where there is one: a finding. */
  readonly strip?: string;
  /** What it is about; of a rule-out, its sentence without the full stop. */
  readonly says: string;
  /** In a few words. */
  readonly before: string;
  readonly now: string;
  /** Of a state: the probabilities that the words are of. */
  readonly odds?: { readonly before: StateOdds; readonly now: StateOdds };
}

/** What of one piece is said otherwise on two states of the graph. */
export interface ShiftsInWords {
  /** Left out where the conclusion reads the same. */
  readonly headlineBefore?: string;
  readonly headline?: string;
  readonly lines: readonly ShiftLine[];
}
