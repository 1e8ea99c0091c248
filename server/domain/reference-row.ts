import type { Citations, Scope, Strength } from "./claim.ts";
import type { Id, TermId } from "./ids.ts";

export type ReferenceRowId = Id<"reference row">;

/** A number or a word for what cannot be put as one (a formula, a month), or a range with both ends included. */
export type Measured = { readonly value: number | string } | { readonly from: number; readonly to: number };

/**
 * A row of a reference table: a measured or counted value that bounds no date, such as the shrinkage of a wood or the
 * pitch of a saw mark. Rows that disagree stand side by side, each with its own citation.
 */
export type ReferenceRow = Measured & {
  /** `<table>.<slug>`, e.g. `shrinkage.white-ash-radial`. */
  readonly id: ReferenceRowId;
  /** The table is the file the row stands in. */
  readonly table: string;
  /** What was measured: a wood, a fitting, a feature, a kind of part. */
  readonly term: TermId;
  /** Which quantity of it, in words: “radial shrinkage, green to oven-dry”. */
  readonly quantity: string;
  /** Unit of the value; left out where the value has none. */
  readonly unit?: string;
  readonly strength: Strength;
  /** Where the value holds; left out where it holds anywhere. */
  readonly scope?: Scope;
  readonly citations: Citations;
  readonly note?: string;
  /** Row of the fact register it was taken from, e.g. `H1`. */
  readonly row?: string;
};
