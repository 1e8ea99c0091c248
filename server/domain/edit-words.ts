/** One thing that is not as it was: both sides in words; `before` is left out where it came new, `after` where it went. */
export interface DifferenceInWords {
  /** What it is that differs: "date", "strength", "citation". */
  readonly what: string;
  readonly before?: string;
  readonly after?: string;
}

/** One thing that one or both sides of an edit say. */
export interface ComparedInWords extends DifferenceInWords {
  readonly differs: boolean;
}

/** Both sides of an edit, each as a line and field by field; a side that there is not is left out. */
export interface SidesInWords {
  readonly before?: string;
  readonly after?: string;
  readonly rows: readonly ComparedInWords[];
}

export type EditKind = "added" | "changed" | "withdrawn";

/** An edit of one thing in words. */
export interface EditInWords {
  readonly does: EditKind;
  /** The thing as it stood after the edit, as a line; of a withdrawn one, as it last stood. */
  readonly says: string;
  /** None where the thing was added or withdrawn. */
  readonly differences: readonly DifferenceInWords[];
}
