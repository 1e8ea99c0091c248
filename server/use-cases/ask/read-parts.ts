import { compareIds } from "../../domain/compare.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";
import { readThrough } from "../../ports/read-through.ts";
import type { Store } from "../../ports/store.ts";

/** Every kind of part, by id. */
export const readParts = async (store: Store, at: RevisionNumber | undefined): Promise<readonly Term[]> =>
  (await readThrough(store.allTerms({ kinds: ["part"] }, at))).toSorted(compareIds);
