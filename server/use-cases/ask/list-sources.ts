import type { RevisionNumber } from "../../domain/revision.ts";
import type { Source } from "../../domain/source.ts";
import type { Page, PageAsk, Store } from "../../ports/store.ts";

/** All sources, sorted by id. */
export const listSources = (
  { store }: { readonly store: Store },
  page: PageAsk,
  at?: RevisionNumber,
): Promise<Page<Source>> => store.listSources(page, at);
