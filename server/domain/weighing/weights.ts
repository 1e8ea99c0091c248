import type { ClaimId, ObservationId, PartId, SourceId } from "../ids.ts";
import type { StateOdds } from "./odds.ts";

/** Words for a weight by |log10| of a Bayes factor: under 0.5, under 1, under 2, else; "beyond" at probability 0 or 1. */
export const WEIGHT_WORDS = ["slight", "moderate", "strong", "very strong", "beyond the model"] as const;
export type WeightWord = (typeof WEIGHT_WORDS)[number];

/** What one observation, or a group that cannot be told apart, weighs for the attribution. Above 0 it speaks for it. */
export interface Weight {
  /** One observation, or several linked by one tool, source, cause or group of parts. */
  readonly observations: readonly ObservationId[];
  readonly linkedBy?: "tool" | "source" | "cause" | "restoration";
  /** log10 of the Bayes factor that is lost when it is left out. */
  readonly leaveOneOut: number | null;
  /** Its step in the chain that adds up to the total. */
  readonly chain: number | null;
  readonly word: WeightWord;
}

export interface Weights {
  /** log10 of the Bayes factor for the claimed years; null beyond the model, like each step. */
  readonly total: number | null;
  /** In the order of the chain: the largest leave-one-out first, then id. */
  readonly steps: readonly Weight[];
}

/** One thing changed at a time, and what then comes out. */
export interface Varied {
  readonly what:
    | { readonly kind: "date-prior"; readonly prior: "uniform" | "as claimed" | "production" }
    | { readonly kind: "later-parts" | "leak" | "wrong-claims"; readonly factor: 0.5 | 2 }
    | { readonly kind: "without-source"; readonly source: SourceId }
    | { readonly kind: "without-claim"; readonly claim: ClaimId };
  /** Probability of the claimed years. */
  readonly claimed: number;
  readonly log10: number | null;
  readonly parts: readonly { readonly part: PartId; readonly odds: StateOdds }[];
}

/** How far the answer hangs on what was assumed. */
export interface Sensitivity {
  readonly varied: readonly Varied[];
  /** Least and greatest probability of the claimed years if a tenth of the prior may be anything (Berger & Berliner 1986). */
  readonly bounds: { readonly epsilon: number; readonly claimed: readonly [number, number] };
  /** Least and greatest over all of it. */
  readonly claimed: readonly [number, number];
  readonly original: readonly { readonly part: PartId; readonly range: readonly [number, number] }[];
  /** What changes the word of the answer; empty if nothing does. */
  readonly dependsOn: readonly Varied["what"][];
}
