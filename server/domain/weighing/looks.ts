import type { ClaimId, PartId, TermId } from "../ids.ts";
import type { Move } from "../looking.ts";
import type { PartState } from "../part-state.ts";
import type { Position } from "../position.ts";

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
  /** Other parts on which the same would tell something, the one that tells most first. */
  readonly alsoOn: readonly PartId[];
  /** An exception not looked for, that would take away these findings. */
  readonly wouldVoid: readonly { readonly claim: ClaimId; readonly findings: readonly string[] }[];
  /** What each answer does to the probability of the claimed years. */
  readonly ifSeen: number;
  readonly ifAbsent: number;
}

export interface Looks {
  /**
   * Exceptions first; then in turn what tells most of the claim and what tells most of the state of a part, for the effort; then ids.
   * Few on each part, one of each family.
   */
  readonly next: readonly Look[];
  /** Looks that were weighed. */
  readonly considered: number;
  readonly leftOut: LeftOut;
  /** There were more than could be weighed; those that take most trouble were not. */
  readonly cut: boolean;
}

/** Why looks are not among those told, in numbers. */
export interface LeftOut {
  /** Not weighed: what was seen or looked for on the part answers it. */
  readonly answered: number;
  /** Not weighed: the piece has nothing of the kind, or is of a form that it is not known of. */
  readonly notOfPiece: number;
  /** They would tell nothing. */
  readonly silent: number;
  /** One of the same family is told, or enough on the part. */
  readonly alike: number;
  /** They would tell less than all that is told. */
  readonly less: number;
}

/** What an answer would do to the claim, and to the state of its part. */
export interface PlanAnswer {
  readonly claim: "rules out" | "against" | "for" | "says nothing";
  /** log10 of the Bayes factor for the claimed years; null beyond the model. */
  readonly log10: number | null;
  /** The state of the part that it speaks for, if it does. */
  readonly state?: PartState;
}

/** Something to look at on a form of a region and date, before the piece is there. */
export interface PlanItem {
  /** Its place in the order of what tells most, from 1 on. */
  readonly rank: number;
  readonly position: Position;
  readonly kindOfPart: TermId;
  readonly feature: TermId;
  readonly move: Move;
  readonly bits: number;
  readonly bitsOfState: number;
  /** Other kinds of part on which the same would tell. */
  readonly alsoOn: readonly TermId[];
  readonly ifSeen: PlanAnswer;
  readonly ifAbsent: PlanAnswer;
  readonly claims: readonly ClaimId[];
}
