import type { Source } from "../../../domain/source.ts";
import { LARGEST_PAGE, type Store } from "../../../ports/store.ts";

/** All sources of the newest revision, in the order of their ids. */
export async function everySource(store: Store): Promise<readonly Source[]> {
  const sources: Source[] = [];
  for (let after: string | undefined, isMore = true; isMore; ) {
    const page = await store.listSources({ first: LARGEST_PAGE, ...(after ? { after } : {}) });
    sources.push(...page.rows);
    after = page.cursors.at(-1);
    isMore = page.hasMore;
  }
  return sources;
}
