import type { Problem } from "../domain/problem.ts";
import type { Revision } from "../domain/revision.ts";
import type { Commit, Store } from "./store.ts";

/** What an import asks of what it goes into: a store, or what becomes one later. */
export interface ImportTarget
  extends Pick<Store, "newestRevision" | "terms" | "claims" | "sources" | "allTerms"> {
  commit(commit: Pick<Commit, "change" | "by" | "at" | "message">): Promise<Revision | Problem>;
}
