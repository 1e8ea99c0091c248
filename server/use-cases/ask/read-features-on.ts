import { compareIds } from "../../domain/compare.ts";
import type { TermId } from "../../domain/ids.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";
import { openTurns } from "../../ports/open-turns.ts";
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
 * by id. The lists are read a page in turn, so that where they are too long none is left out for another. `turn` is called
 * between pages.
 */
export async function readFeaturesOn(
  store: Store,
  lists: readonly (readonly TermId[])[],
  most: number,
  at: RevisionNumber | undefined,
  turn = openTurns(),
): Promise<FeaturesRead> {
  const kinds = ["feature"] as const;
  const all = await store.listTerms(
    { kinds, parts: [...new Set(lists.flat())] },
    { first: LARGEST_PAGE },
    at,
  );
  if (!all.hasMore && all.total <= most) return { features: all.rows, isCut: false };
  const found = new Map<TermId, Term>();
  let isCut = false;
  let left: readonly { readonly parts: readonly TermId[]; readonly after?: string }[] = lists.map(
    (parts) => ({ parts }),
  );
  while (left.length > 0 && !isCut) {
    const next: (typeof left)[number][] = [];
    for (const { parts, ...from } of left) {
      await turn();
      const page = await store.listTerms({ kinds, parts }, { first: LARGEST_PAGE, ...from }, at);
      for (const term of page.rows)
        if (found.size < most) found.set(term.id, term);
        else isCut ||= !found.has(term.id);
      const after = page.cursors.at(-1);
      if (page.hasMore && after !== undefined) next.push({ parts, after });
      if (isCut) break;
    }
    left = next;
  }
  return { features: [...found.values()].sort(compareIds), isCut };
}
