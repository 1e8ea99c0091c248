/** Ids of one column, a row each: in ASCII, each ended by a line feed. An empty line is none. */
export type IdColumn = Uint8Array;

/**
 * Some rows of what a walk runs over, at one revision, column by column, so that a million of them are handed over in a
 * few large pieces:
 *
 * - `terms`: every term with its broader one;
 * - `statements`: every accepted claim that has a subject, with it;
 * - `leads`: what accepted `requires` claims name in their ways, each once a claim, with the region of the claim's scope;
 * - `exceptions`: every accepted `void when` claim, with the claim it is about.
 */
export type WalkBlock =
  | { readonly rows: "terms"; readonly id: IdColumn; readonly broader: IdColumn }
  | { readonly rows: "statements"; readonly subject: IdColumn; readonly claim: IdColumn }
  | {
      readonly rows: "leads";
      readonly subject: IdColumn;
      readonly target: IdColumn;
      readonly region: IdColumn;
    }
  | { readonly rows: "exceptions"; readonly of: IdColumn; readonly claim: IdColumn };

const encoder = new TextEncoder();

/** A column of these ids. */
export const idColumn = (ids: readonly (string | undefined)[]): IdColumn =>
  encoder.encode(ids.map((id) => `${id ?? ""}\n`).join(""));

const decoder = new TextDecoder();

/** The ids of a column; where there is none, an empty text. */
export const idsOf = (column: IdColumn): readonly string[] => decoder.decode(column).split("\n").slice(0, -1);
