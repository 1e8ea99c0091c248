import type { ClaimId, ObservationId, PartId } from "#server/domain/ids.ts";
import type { Finding, SetAside, VoidIf } from "#server/domain/report.ts";
import type { StepInWords } from "#server/domain/report-words.ts";
import type { Year, YearsJson } from "#server/domain/years.ts";

/** Shape of the mark before a row: never told by colour alone. */
export type StripMark =
  | "against-hard"
  | "against-soft"
  | "for"
  | "silent"
  | "sign"
  | "sign-set-aside"
  | "sign-of-age";

/** From the claimed years to the nearest years of the feature. */
export interface StripGap {
  readonly from: Year;
  readonly to: Year;
}

/** A sign of alteration that an observation is, as a sentence with what sets it aside or would. */
export interface SignInRow {
  /** The claim that reads it as a sign. */
  readonly claim: ClaimId;
  readonly says: string;
  /** What it speaks for, without naming it again: "speaks for a later part". */
  readonly brief: string;
  readonly isSetAside: boolean;
  /** Speaks of alteration; else it speaks for an original part. */
  readonly isOfChange: boolean;
  readonly because: readonly string[];
  readonly look: readonly string[];
}

/** One way of a closed list, and whether the claimed years leave it open. */
export interface WayInRow {
  readonly label: string;
  readonly isOpen: boolean;
  readonly years: YearsJson;
}

/** Everything one line of the dating strips shows. A plain value, so that an unchanged row is known by comparison. */
export interface StripRow {
  /** The finding's id. */
  readonly id: string;
  readonly observation?: ObservationId;
  readonly part?: PartId;
  readonly label: string;
  readonly mark: StripMark;
  /** True where nothing bounds the years: a dotted line stands for the bar. */
  readonly isSilent: boolean;
  readonly hardness?: Finding["hardness"];
  readonly possible: YearsJson;
  readonly usual: YearsJson;
  readonly gap?: StripGap;
  readonly short: string;
  readonly says: string;
  readonly steps: readonly StepInWords[];
  readonly paths: readonly string[];
  readonly pathCount: number;
  readonly ways: readonly WayInRow[];
  readonly signs: readonly SignInRow[];
  readonly setAside: readonly SetAside[];
  readonly voidIf: readonly VoidIf[];
}

/** Rows of one part; `part` is missing for what is claimed of the whole piece. */
export interface StripGroup {
  /** The part's id, or `claimed`: what a group is known by. */
  readonly id: string;
  readonly part?: PartId;
  readonly label: string;
  readonly rows: readonly StripRow[];
}
