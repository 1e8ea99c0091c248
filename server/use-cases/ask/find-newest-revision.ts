import type { Revision } from "../../domain/revision.ts";
import type { Store } from "../../ports/store.ts";

/** How the graph stands; none while it is empty. */
export const findNewestRevision = ({ store }: { readonly store: Store }): Promise<Revision | undefined> =>
  store.newestRevision();
