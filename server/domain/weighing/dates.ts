import type { ClaimId, PartId, SourceId, TermId } from "../ids.ts";
import type { Place } from "../report.ts";
import type { Year, YearsJson } from "../years.ts";
import type { StateOdds } from "./odds.ts";

/** The smallest years that hold at least 95 % of the probability, ties taken whole, with what they do hold. */
export interface Credible {
  readonly years: YearsJson;
  readonly mass: number;
}

/** Probabilities of years: one for each `step` years from `from` on. They add up to 1. */
export interface YearOdds {
  readonly from: Year;
  readonly step: number;
  readonly odds: readonly number[];
  readonly mode: Year;
  readonly mean: number;
  readonly credible: Credible;
}

/** Parts that share one state: one part, or all that are together. */
export interface PartDates {
  readonly parts: readonly PartId[];
  readonly prior: StateOdds;
  readonly odds: StateOdds;
  /** When this part was made, whatever its state. */
  readonly made: YearOdds;
  /** When the later work on it was done, if it is reworked; absent where nothing dates any. */
  readonly worked?: YearOdds;
  /** The same odds if the attribution is taken as true. */
  readonly ifAsClaimed: StateOdds;
}

/** What parts that share one state are, without years. */
export type PartOdds = Pick<PartDates, "parts" | "prior" | "odds">;

/** When the piece was made, and what each part is, as probabilities under the stated assumptions. */
export interface Dates {
  readonly whole: YearOdds;
  /** Of the claimed years, before and after what was seen; `log10` of the Bayes factor for them, null beyond the model. */
  readonly claimed: { readonly prior: number; readonly posterior: number; readonly log10: number | null };
  /** log10 of the probability of everything seen. */
  readonly evidence: number;
  readonly parts: readonly PartDates[];
  /** Where it was made, if more than one place is open. */
  readonly places: readonly { readonly place: Place; readonly probability: number }[];
  /** Curves whose shape is assumed in part: the event that no claim states. */
  readonly assumedShapes: readonly {
    readonly feature: TermId;
    readonly missing: readonly ("introduced" | "common" | "declining" | "gone")[];
  }[];
  /** Claims and sources tried both right and wrong, and those that were taken each by itself. */
  readonly tried: readonly (ClaimId | SourceId)[];
  readonly takenApart: readonly (ClaimId | SourceId)[];
}
