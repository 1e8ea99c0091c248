import type { TermKind } from "#server/domain/term.ts";
import type { ClaimSpans } from "#web/shared/years/claim-spans.ts";

/** A term of a neighbourhood as a row of its drawing. */
export interface TermRow {
  readonly type: "term";
  /** Id of the term. */
  readonly id: string;
  /** Its place in the list beside the drawing; none for the term in the middle. */
  readonly number?: number;
  /** Steps from the term in the middle. */
  readonly step: 0 | 1 | 2;
  readonly kind: TermKind;
  readonly label: string;
  /** How the term it is reached from stands to it: "needed for". */
  readonly words: string;
  /** hard: physical. soft: habit or fashion, or bounds nothing. bare: no claim says it, the term itself does. */
  readonly look: "hard" | "soft" | "bare";
  /** Claims that have years to draw, the earliest first. */
  readonly claims: readonly {
    readonly id: string;
    readonly spans: ClaimSpans;
    readonly isSoft: boolean;
  }[];
}

/** A line that says how many are left out there. */
export interface MoreRow {
  readonly type: "more";
  readonly id: string;
  readonly step: 1 | 2;
  readonly words: string;
}

/** Rows in the order they are read: each term after the one it is reached from. */
export type AroundRow = TermRow | MoreRow;

/** A link that reaches no term: drawn while one of its ends is chosen. */
export interface ExtraLink {
  readonly id: string;
  readonly from: string;
  readonly to: string;
}
