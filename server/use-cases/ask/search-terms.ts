import type { TermKind } from "../../domain/term.ts";
import type { SearchHit, Store } from "../../ports/store.ts";

/** Longest search text that is read; the rest is left out. */
const MOST_LETTERS = 200;

/** Terms that have the words or their beginnings in label, other labels or note; best first. Blank text finds nothing. */
export const searchTerms = async (
  { store }: { readonly store: Store },
  words: string,
  kinds: readonly TermKind[] | undefined,
  first: number,
): Promise<readonly SearchHit[]> =>
  words.trim() === ""
    ? []
    : store.search(words.slice(0, MOST_LETTERS).trim(), kinds === undefined ? {} : { kinds }, first);
