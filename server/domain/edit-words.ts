/** One thing that is not as it was: both sides in words; `before` is left out where it came new, `after` where it went. */
export interface DifferenceInWords {
  /** What it is that differs: "date", "strength", "citation". */
  readonly what: string;
  readonly before?: string;
  readonly after?: string;
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
