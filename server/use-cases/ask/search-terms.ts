import type { SearchFilter, SearchHit, Store } from "../../ports/store.ts";

/** Longest search text that is read; the rest is left out. */
const MOST_LETTERS = 200;

/**
 * Terms that have the words or their beginnings in label, other labels or note; best first. Without words all that the
 * filter admits, if it is narrowed by part, region or years; else nothing.
 */
export const searchTerms = async (
  { store }: { readonly store: Store },
  words: string,
  filter: SearchFilter,
  first: number,
): Promise<readonly SearchHit[]> => store.search(words.slice(0, MOST_LETTERS).trim(), filter, first);
