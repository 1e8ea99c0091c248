import { id as idOf } from "../../domain/ids.ts";
import { kindOfId } from "../../domain/kind-of-id.ts";
import type { Page, PageAsk, PastEdit, Store } from "../../ports/store.ts";

const NONE: Page<PastEdit> = { rows: [], cursors: [], hasMore: false, total: 0 };

/** Every edit of a term, claim or source, newest first; none for what never was, and for what is no part of the graph. */
export async function readHistory(
  { store }: { readonly store: Store },
  id: string,
  page: PageAsk,
): Promise<Page<PastEdit>> {
  const kind = kindOfId(id);
  return kind === undefined ? NONE : store.history(kind, idOf(id), page);
}
