import type { Revision, RevisionNumber } from "../../domain/revision.ts";
import type { Store } from "../../ports/store.ts";

/** The revision of a number, or how the graph stands: none while it is empty. */
export const findRevision = (
  { store }: { readonly store: Store },
  number: RevisionNumber | undefined,
): Promise<Revision | undefined> => (number === undefined ? store.newestRevision() : store.revision(number));
