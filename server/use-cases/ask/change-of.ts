import type { Change } from "../../domain/change.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Store } from "../../ports/store.ts";

/** The edits that made a revision; none for one that does not exist. */
export const changeOf = async (
  { store }: { readonly store: Store },
  revision: RevisionNumber,
): Promise<Change> => (await store.changeAt(revision)) ?? [];
