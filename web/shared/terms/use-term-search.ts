import { useQuery } from "@apollo/client/react";
import { useDeferredValue } from "react";
import type { TermKind } from "#web/shared/apollo/schema-types.graphql.ts";
import { type FoundTermFragment, TermSearchDocument } from "./TermSearch.graphql.ts";

export type FoundTerm = FoundTermFragment;

interface TermSearch {
  readonly found: readonly FoundTerm[];
  /** The answer to the words as they stand is not there yet. */
  readonly isLooking: boolean;
}

/**
 * Terms that can be named, by the words typed so far, best first; the last answer stays until the next is there. In the place of one
 * that is one with another stands the one that stands for both.
 */
export function useTermSearch(words: string, kinds: readonly TermKind[]): TermSearch {
  const settled = useDeferredValue(words.trim());
  const { data, previousData, loading } = useQuery(TermSearchDocument, {
    variables: { words: settled, kinds },
    skip: settled === "",
  });
  const isLooking = loading || settled !== words.trim();
  if (settled === "") return { found: [], isLooking };
  const found = ((data ?? previousData)?.search ?? []).map(({ term }) => term.mergedInto ?? term);
  return { found: [...new Map(found.map((term) => [term.id, term])).values()], isLooking };
}
