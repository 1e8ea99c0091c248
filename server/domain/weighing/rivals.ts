import type { ObservationId, PartId, TermId } from "../ids.ts";
import type { YearsJson } from "../years.ts";

export const RIVALS = [
  "as-claimed",
  "later-parts",
  "provincial",
  "another-region",
  "revival",
  "made-up",
  "assembled",
  "to-look-old",
] as const;
/**
 * Other stories of a piece: as claimed; as claimed with later parts; provincial and late; made in another region; of a revival;
 * made up from several; assembled lately from old parts; made later to look old.
 */
export type RivalKind = (typeof RIVALS)[number];

/** One story with its own priors, and how it does. */
export interface Rival {
  readonly kind: RivalKind;
  /** Of another region: the one meant. */
  readonly region?: TermId;
  readonly years: YearsJson;
  readonly prior: number;
  /** log10 of the probability of everything seen under it; null where that is 0. */
  readonly evidence: number | null;
  /** Probability among the rivals weighed. */
  readonly posterior: number;
  /** log10 of the Bayes factor against the story as claimed; 0 for that itself, null beyond the model. */
  readonly against: number | null;
  /** Parts that are then not of the first making. */
  readonly parts: readonly PartId[];
  /** What was seen that tells it most from the story as claimed, the largest first. */
  readonly told: readonly { readonly observation: ObservationId; readonly log10: number }[];
  /** What would tell them apart if it were looked for, the largest first. */
  readonly wouldTell: readonly { readonly part: PartId; readonly feature: TermId; readonly bits: number }[];
}

export interface Rivals {
  readonly weighed: readonly Rival[];
  /** False where the two best differ by less than half a decade of odds: the evidence does not discriminate between them. */
  readonly discriminates: boolean;
  /** The prior of "made later to look old" if that story was asked for; else it is not weighed. */
  readonly madeToDeceive?: number;
}
