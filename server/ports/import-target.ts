import type { Problem } from "../domain/problem.ts";
import type { Revision } from "../domain/revision.ts";
import type { Commit, Store } from "./store.ts";

/** What an import asks of what it goes into: a store, or what becomes one later. */
export interface ImportTarget
  extends Pick<Store, "newestRevision" | "terms" | "claims" | "sources" | "allTerms"> {
  /** Gives what refuses it; else the revision, where it is made by then. */
  commit(commit: Pick<Commit, "change" | "by" | "at" | "message">): Promise<Revision | Problem | undefined>;
}

/** What a target says of itself in which nothing stands. */
export const NOTHING_STANDS: Pick<ImportTarget, "terms" | "claims" | "sources" | "allTerms"> = {
  terms: async () => new Map(),
  claims: async () => new Map(),
  sources: async () => new Map(),
  allTerms: async function* () {},
};

/**
 * An empty store that takes all of an import or nothing of it: nothing stands before the end, and revisions are written as they
 * come, so that whoever gives them has to have looked at them.
 */
export interface FillTarget extends ImportTarget {
  /** Keeps all of it, or says why nothing stands. */
  end(): Promise<Problem | undefined>;
  /** Takes all of it back; after a refusal, or in place of an end. */
  drop(): Promise<void>;
}
