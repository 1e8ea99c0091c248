import type { ClaimId, ObservationId, PartId, TermId } from "../ids.ts";
import type { RivalKind } from "./rivals.ts";

/** A weighing in sentences; what has no stage yet is absent. Words first; numbers stand in the sentences with their range. */
export interface WeighingWords {
  /** The conclusion with its range; no score. */
  readonly headline?: string;
  /** At most three. */
  readonly reasons?: readonly string[];
  /** "The answer depends on ..."; empty if nothing assumed changes it. */
  readonly dependsOn?: readonly string[];
  readonly mends?: readonly MendsInWords[];
  readonly origins?: readonly string[];
  /** When the piece as a whole was made, and what that makes of the claimed years. */
  readonly whole?: string;
  readonly parts?: readonly {
    readonly parts: readonly PartId[];
    /** "The drawers". */
    readonly name: string;
    /** "probably later than the piece: 0.83 (0.7 to 0.9)". */
    readonly brief: string;
    /** Whether anything seen bears on it; else what is assumed of such parts stands. */
    readonly tells: boolean;
    /** "The drawers: probably later (about 0.83; 0.7 to 0.9 under other assumptions)." */
    readonly says: string;
    /** When it was made, and when the work on it was done. */
    readonly when: string;
  }[];
  readonly weights?: readonly {
    readonly observations: readonly ObservationId[];
    readonly says: string;
    /** "Circular-saw mark on the back boards", or several with what links them. */
    readonly seen: string;
    /** "strongly against", taken by itself. */
    readonly brief: string;
  }[];
  /** What everything seen weighs together. */
  readonly weightsTogether?: string;
  readonly rivals?: readonly {
    readonly kind: RivalKind;
    readonly region?: TermId;
    readonly name: string;
    readonly says: string;
    readonly years: string;
    /** How it does against the story as claimed, with the number. */
    readonly weighs: string;
    /** "Among these stories 0.94; before anything was seen 0.12." */
    readonly odds: string;
    /** Parts that are then not of the first making; absent if none. */
    readonly laterParts?: string;
    readonly assumes: string;
    readonly told: readonly string[];
    /** What would tell it from the story as claimed, if it were looked for. */
    readonly wouldTell: readonly string[];
  }[];
  /** Whether the evidence tells the best stories apart. */
  readonly rivalsTogether?: string;
  readonly looks?: readonly {
    readonly part: PartId;
    readonly feature: TermId;
    readonly says: string;
    readonly because: string;
  }[];
  /** How many looks these were chosen from, and why the others were not. */
  readonly looksTogether?: string;
  /** What was not worked out, and why. */
  readonly missing: readonly string[];
}

export interface MendsInWords {
  readonly level: "physical" | "practice";
  readonly says: string;
  /** "For 1760 to 1780 to be possible", to be followed by what is given up. */
  readonly opening: string;
  readonly perPart: readonly {
    readonly parts: readonly PartId[];
    /** "the bracket feet"; of what is claimed of the whole, that. */
    readonly name: string;
    readonly says: string;
    readonly options: readonly {
      readonly says: string;
      /** Each thing given up as a phrase, to stand in a list. */
      readonly given: readonly string[];
      /** "easily", "at some cost", "at great cost": how much is given up. */
      readonly price: string;
      readonly claims: readonly ClaimId[];
    }[];
  }[];
  readonly moved?: string;
  /** Whether nothing cheaper can be. */
  readonly proved: string;
}
