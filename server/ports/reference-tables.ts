import type { TermId } from "../domain/ids.ts";
import type { ReferenceRow } from "../domain/reference-row.ts";

/**
 * The reference tables: measured and counted values beside the graph. They come with the seed data and have no
 * revisions, so a row can name a term or source that a revision does not have.
 */
export interface ReferenceTables {
  /** Rows of a term, by id. */
  rowsAbout(term: TermId): readonly ReferenceRow[];
}

/** Tables of these rows, kept in their order. */
export function tablesOf(rows: readonly ReferenceRow[]): ReferenceTables {
  const byTerm = Map.groupBy(rows, ({ term }) => term);
  return { rowsAbout: (term) => byTerm.get(term) ?? [] };
}
