import type { Written } from "#server/domain/written.ts";

/** Writes without the chain of the ledger: what was written, in order. */
export const plainWrites = (writes: readonly Written[]): readonly object[] =>
  writes.map(({ content: _, previous: __, hash: ___, ...plain }) => plain);
