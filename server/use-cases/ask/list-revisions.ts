import type { Revision } from "../../domain/revision.ts";
import type { Page, PageAsk, Store } from "../../ports/store.ts";

/** States of the graph, newest first. */
export const listRevisions = ({ store }: { readonly store: Store }, page: PageAsk): Promise<Page<Revision>> =>
  store.revisions(page);
