import { followGraph, layOn } from "../ports/follow-graph.ts";
import type { Store } from "../ports/store.ts";
import { type ClaimPlaces, claimPlaces } from "./claim-places.ts";
import { checkHits, type TermSearch, termSearch } from "./term-search.ts";

/**
 * The search of a store (S13, S40): terms by their words, and where and when claims speak of them, each kept in memory
 * from the first search that needs it and following every change since.
 */
export function searchGraph(
  store: Pick<Store, "newestRevision" | "changeAt" | "allTerms" | "allClaims">,
): Store["search"] {
  const terms = followGraph<TermSearch>(store, {
    begin: async (at) => {
      const search = termSearch();
      for await (const slice of store.allTerms({}, at)) for (const after of slice) search.apply({ after });
      return search;
    },
    follow: (search, edits) =>
      layOn(edits, (edit) => {
        if (edit.kind === "term") search.apply(edit);
      }),
  });
  const places = followGraph<ClaimPlaces>(store, {
    begin: async (at) => {
      const made = claimPlaces();
      for await (const slice of store.allClaims({}, at)) for (const claim of slice) made.put(claim);
      return made;
    },
    follow: (made, edits) =>
      layOn(edits, ({ kind, before, after }) => {
        if (kind !== "claim") return;
        if (before) made.drop(before);
        if (after) made.put(after);
      }),
  });
  return async (words, filter, first) => {
    checkHits(first);
    const isPlaced = filter.region !== undefined || filter.years !== undefined;
    const claims = isPlaced ? (await places()).what : undefined;
    return (await terms()).what.find(words, filter, first, claims);
  };
}
