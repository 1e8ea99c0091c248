import type { ClaimId, TermId } from "./ids.ts";
import type { RevisionNumber } from "./revision.ts";
import type { Span } from "./years.ts";

/**
 * Asks for every way from something seen to something dated, and whether those years leave the claimed ones any room. A way
 * follows accepted `requires` claims whose region is none, the asked one, above or below it, comes to no term twice, and
 * ends at an accepted claim that bounds the years of its last term in the asked region or above it. Without a region all count.
 */
export interface DatingsAsk {
  /** Each once. */
  readonly features: readonly TermId[];
  readonly region?: TermId;
  readonly claimed: Span;
  readonly maxDepth: number;
  /** Terms that are come to at most, over all ways. */
  readonly steps: number;
}

export const DATING_LABELS = ["contradictory", "consistent", "silent"] as const;

export interface DatingPath {
  readonly via: readonly ClaimId[];
  readonly dated: ClaimId;
  /** The claimed years are impossible if the dated claim holds. */
  readonly isOut: boolean;
}

/** Of one feature: its ways, ends before longer ones, by the ids of the claims. */
export interface FeatureDatings {
  readonly feature: TermId;
  readonly label: (typeof DATING_LABELS)[number];
  readonly paths: readonly DatingPath[];
}

/** In the order in which the features were asked for. */
export interface Datings {
  readonly revision: RevisionNumber;
  readonly features: readonly FeatureDatings[];
  /** The steps were used up: there may be further ways. */
  readonly isCut: boolean;
}

/** What the ways come to. */
export const labelOf = (paths: readonly DatingPath[]): FeatureDatings["label"] =>
  paths.length === 0 ? "silent" : paths.some(({ isOut }) => isOut) ? "contradictory" : "consistent";
