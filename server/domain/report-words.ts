import type { ClaimId, ObservationId, PartId } from "./ids.ts";

/** One step of a chain in words; `claim` is what to cite beside it. `depth` indents a step below what it supports. */
export interface StepInWords {
  readonly depth: number;
  readonly says: string;
  readonly claim?: ClaimId;
  /** True for an assumption of the engine rather than a claim. */
  readonly assumed: boolean;
}

/** A report in sentences a colleague would say. Made from the report alone, by server/reasoning/explain. */
export interface ReportWords {
  readonly headline: string;
  /** At most three. */
  readonly reasons: readonly string[];
  readonly findings: readonly {
    readonly id: string;
    /** The whole sentence. */
    readonly says: string;
    /** A few words for the end of a strip: "40 years too late", "says nothing: no date for this region". */
    readonly short: string;
    readonly steps: readonly StepInWords[];
    readonly paths: readonly string[];
  }[];
  readonly ruleOuts: readonly {
    readonly id: string;
    readonly says: string;
    readonly steps: readonly StepInWords[];
  }[];
  readonly signs: readonly {
    readonly observation: ObservationId;
    readonly claim: ClaimId;
    readonly says: string;
    /** Why it is set aside, or what would set it aside. */
    readonly because: readonly string[];
    readonly look: readonly string[];
  }[];
  readonly parts: readonly { readonly part: PartId; readonly says: string }[];
  readonly gaps: readonly string[];
  readonly notSearched: readonly string[];
}
