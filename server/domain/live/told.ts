import type { RevisionNumber } from "../revision.ts";

/** What can be followed. */
export const NEWS_KINDS = ["examination", "graph", "proposal"] as const;
export type NewsKind = (typeof NEWS_KINDS)[number];

/** One thing that was changed: what, never how. Whoever wants to know reads it, with what they may see. */
export type Told =
  | {
      readonly kind: "examination";
      readonly sequence: number;
      readonly id: string;
      readonly version: number;
    }
  | { readonly kind: "graph"; readonly sequence: number; readonly revision: RevisionNumber }
  /** A proposal, a review or a dispute, or what is said about one: its id. */
  | { readonly kind: "proposal"; readonly sequence: number; readonly id: string };

/** What was changed up to a write, all that was asked for of it. */
export interface ToldSo {
  readonly sequence: number;
  readonly told: readonly Told[];
  /** More that was missed follows at once. */
  readonly hasMore: boolean;
  /** Too much was missed, or the store was restored: what is shown is to be read anew. */
  readonly readAnew: boolean;
}
