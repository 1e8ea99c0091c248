import type { RevisionNumber } from "../revision.ts";
import type { Dates } from "./dates.ts";
import type { Looks } from "./looks.ts";
import type { Mends } from "./mends.ts";
import type { AssumedOdds } from "./odds.ts";
import type { Origins } from "./origins.ts";
import type { Rivals } from "./rivals.ts";
import type { Sensitivity, Weights } from "./weights.ts";

export const STAGES = ["mends", "origins", "dates", "weights", "sensitivity", "rivals", "looks"] as const;
export type Stage = (typeof STAGES)[number];

/**
 * What follows from a report when probabilities are weighed: one plain JSON value without prose, the same bytes for the same
 * input. Numbers have six significant digits. A stage that was stopped is absent and named in `missing`.
 */
export interface Weighing {
  readonly format: "scribeline/weighing";
  readonly version: 1;
  readonly engine: string;
  readonly revision: RevisionNumber;
  readonly odds: AssumedOdds;
  readonly mends?: { readonly possible: Mends; readonly usual: Mends };
  readonly origins?: Origins;
  readonly dates?: Dates;
  readonly weights?: Weights;
  readonly sensitivity?: Sensitivity;
  readonly rivals?: Rivals;
  readonly looks?: Looks;
  readonly missing: readonly { readonly stage: Stage; readonly why: "stopped" | "budget" }[];
}
