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
  readonly parts?: readonly {
    readonly parts: readonly PartId[];
    /** "The drawers: probably later (about 0.83; 0.7 to 0.9 under other assumptions)." */
    readonly says: string;
    /** When it was made, and when the work on it was done. */
    readonly when: string;
  }[];
  readonly weights?: readonly { readonly observations: readonly ObservationId[]; readonly says: string }[];
  readonly rivals?: readonly {
    readonly kind: RivalKind;
    readonly region?: TermId;
    readonly name: string;
    readonly says: string;
    readonly assumes: string;
    readonly told: readonly string[];
  }[];
  readonly looks?: readonly {
    readonly part: PartId;
    readonly feature: TermId;
    readonly says: string;
    readonly because: string;
  }[];
  /** What was not worked out, and why. */
  readonly missing: readonly string[];
}

export interface MendsInWords {
  readonly level: "physical" | "practice";
  readonly says: string;
  readonly perPart: readonly {
    readonly parts: readonly PartId[];
    readonly says: string;
    readonly options: readonly {
      readonly says: string;
      /** "easily", "at some cost", "at great cost": how much is given up. */
      readonly price: string;
      readonly claims: readonly ClaimId[];
    }[];
  }[];
  readonly moved?: string;
  /** Whether nothing cheaper can be. */
  readonly proved: string;
}
