import { noteOf } from "#server/chain/link-written.ts";
import type { Written } from "#server/domain/written.ts";

/** Writes without the chain of the ledger: what was written, in order. */
export const plainWrites = (writes: readonly Written[]): readonly object[] =>
  writes.map((written) => ({ sequence: written.sequence, ...noteOf(written) }));
