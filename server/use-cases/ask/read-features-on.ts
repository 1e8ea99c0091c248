import { compareIds } from "../../domain/compare.ts";
import type { TermId } from "../../domain/ids.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";
import { readThrough } from "../../ports/read-through.ts";
import { LARGEST_PAGE, type Store } from "../../ports/store.ts";

/** Features looked for on kinds of part, as far as they were read. */
export interface FeaturesRead {
  /** By id. */
  readonly features: readonly Term[];
  /** How many more there are. */
  readonly unread: number;
}

/** Features that are read for one question; nobody looks for more on one piece. */
export const MOST_FEATURES = 2_000;

/**
 * The features that are looked for on any of these kinds of part. Where they are more than `MOST_FEATURES`, the first of
 * each kind by id, as many of one as of another.
 */
export async function readFeaturesOn(
  store: Store,
  parts: readonly TermId[],
  at: RevisionNumber | undefined,
): Promise<FeaturesRead> {
  const kinds = ["feature"] as const;
  const { rows, hasMore, total } = await store.listTerms({ kinds, parts }, { first: LARGEST_PAGE }, at);
  if (!hasMore) return { features: rows, unread: 0 };
  if (total <= MOST_FEATURES) {
    const all = await readThrough(store.allTerms({ kinds, parts }, at));
    return { features: all.toSorted(compareIds), unread: 0 };
  }
  const share = Math.ceil(MOST_FEATURES / parts.length);
  const found = new Map<TermId, Term>();
  for (const part of parts)
    for (const term of await readFirst(store, part, share, at)) found.set(term.id, term);
  return { features: [...found.values()].sort(compareIds), unread: total - found.size };
}

async function readFirst(
  store: Store,
  part: TermId,
  most: number,
  at: RevisionNumber | undefined,
): Promise<readonly Term[]> {
  const terms: Term[] = [];
  for (let after: string | undefined; terms.length < most; ) {
    const first = Math.min(LARGEST_PAGE, most - terms.length);
    const filter = { kinds: ["feature"], parts: [part] } as const;
    const page = await store.listTerms(filter, { first, ...(after === undefined ? {} : { after }) }, at);
    terms.push(...page.rows);
    after = page.cursors.at(-1);
    if (!page.hasMore) break;
  }
  return terms;
}
