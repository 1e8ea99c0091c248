import type { ExaminationId, ObservationId, PartId, TermId } from "./ids.ts";
import type { ChosenOdds } from "./weighing/chosen-odds.ts";
import type { Year } from "./years.ts";

/** What is claimed of the piece. The date is EDTF in the role `event`; what is not stated is unknown. */
export interface Attribution {
  readonly date: string;
  readonly region?: TermId;
  readonly form?: TermId;
  readonly style?: TermId;
  readonly maker?: TermId;
}

/** A physical component. `within` makes the tree; `region` only where the part is known to be from elsewhere. */
export interface Part {
  readonly id: PartId;
  readonly label: string;
  /** Kind of part, a term of kind `part`. */
  readonly kind?: TermId;
  readonly within?: PartId;
  readonly region?: TermId;
}

export const SEEN = ["present", "absent", "unseen"] as const;
/** present: seen. absent: looked for and not there. unseen: could not be seen. */
export type Seen = (typeof SEEN)[number];
export const SURENESS = ["sure", "probable", "possible"] as const;
export type Sureness = (typeof SURENESS)[number];

/** A feature on a part of this piece. */
export interface Observation {
  readonly id: ObservationId;
  readonly part: PartId;
  readonly feature: TermId;
  readonly seen: Seen;
  readonly sureness: Sureness;
  readonly note?: string;
}

/** Everything recorded of one piece: the content of an examination, and of a piece file. */
export interface Piece {
  readonly title: string;
  /** True for demonstration pieces: no such object exists. */
  readonly invented: boolean;
  readonly note?: string;
  /** Year in which the piece was looked at: nothing on it can be later. */
  readonly examined: Year;
  readonly attribution: Attribution;
  readonly parts: readonly Part[];
  readonly observations: readonly Observation[];
  /** Parts that cannot be of different origin (one board, one hand and batch). */
  readonly together: readonly (readonly PartId[])[];
  /** Pairs of parts that cannot share an origin. */
  readonly separate: readonly (readonly [PartId, PartId])[];
  /** What the examiner assumes of this piece in place of the usual odds. */
  readonly odds?: ChosenOdds;
}

/** A stored piece. `version` counts its changes; `undoTo` is the version an undo goes back to. */
export interface Examination {
  readonly id: ExaminationId;
  readonly version: number;
  readonly undoTo?: number;
  readonly deleted: boolean;
  readonly changedAt: string;
  readonly piece: Piece;
}
