import { compareIds } from "../../domain/compare.ts";
import type { TermId } from "../../domain/ids.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";
import { LARGEST_PAGE, type Store } from "../../ports/store.ts";

/** Features looked for on kinds of part, as far as they were read. */
export interface FeaturesRead {
  /** By id. */
  readonly features: readonly Term[];
  /** There are more, too many to read. */
  readonly isCut: boolean;
}

/**
 * The features that are looked for on some kinds of part, at most `most`. Kinds that are listed together are read together,
 * the first by id; each list has the same share, and what one leaves of it the next ones have.
 */
export async function readFeaturesOn(
  store: Store,
  lists: readonly (readonly TermId[])[],
  most: number,
  at: RevisionNumber | undefined,
): Promise<FeaturesRead> {
  const found = new Map<TermId, Term>();
  let isCut = false;
  for (const [n, parts] of lists.entries()) {
    const share = found.size + Math.ceil((most - found.size) / (lists.length - n));
    let after: string | undefined;
    let hasMore = true;
    while (hasMore && found.size < share) {
      const ask = { first: LARGEST_PAGE, ...(after === undefined ? {} : { after }) };
      const page = await store.listTerms({ kinds: ["feature"], parts }, ask, at);
      for (const term of page.rows)
        if (found.size < share) found.set(term.id, term);
        else isCut ||= !found.has(term.id);
      after = page.cursors.at(-1);
      hasMore = page.hasMore;
    }
    isCut ||= hasMore;
  }
  return { features: [...found.values()].sort(compareIds), isCut };
}
