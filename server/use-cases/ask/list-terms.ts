import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";
import type { Page, PageAsk, Store, TermFilter } from "../../ports/store.ts";

/** Terms by kind or broader term, sorted by id. */
export const listTerms = (
  { store }: { readonly store: Store },
  filter: TermFilter,
  page: PageAsk,
  at?: RevisionNumber,
): Promise<Page<Term>> => store.listTerms(filter, page, at);
