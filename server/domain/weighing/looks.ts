import type { ClaimId, ObservationId, PartId, TermId } from "../ids.ts";
import type { Move } from "../looking.ts";

/** Something worth looking at next. */
export interface Look {
  readonly part: PartId;
  readonly feature: TermId;
  /** Information expected on whether the attribution holds, in bits, over seen, absent and cannot be seen. */
  readonly bits: number;
  /** The same on the state of the part. */
  readonly bitsOfState: number;
  readonly pSeen: number;
  readonly pUnseen: number;
  readonly move: Move;
  /** An exception not looked for, that would take away these findings. */
  readonly wouldVoid: readonly { readonly claim: ClaimId; readonly findings: readonly string[] }[];
  /** What each answer does to the probability of the claimed years. */
  readonly ifSeen: number;
  readonly ifAbsent: number;
}

export interface Looks {
  /** Exceptions first, then by bits for the effort, then ids. */
  readonly next: readonly Look[];
  readonly considered: number;
  readonly cut: boolean;
}

/** Where one stands to look: which of the four an item of a plan belongs to. */
export const POSITIONS = ["front", "drawers out", "back", "underneath"] as const;
export type Position = (typeof POSITIONS)[number];

/** An ordered list of what to look at for a form of a region and date, before the piece is there. */
export interface PlanItem {
  readonly position: Position;
  readonly kindOfPart: TermId;
  readonly feature: TermId;
  readonly move: Move;
  readonly bits: number;
  /** What it would mean for the claim if it is there, and if it is not. */
  readonly ifSeen: "rules out" | "against" | "for" | "says nothing";
  readonly ifAbsent: "against" | "for" | "says nothing";
  readonly claims: readonly ClaimId[];
  /** Observations already made of it, when the plan is filled in. */
  readonly made?: ObservationId;
}
