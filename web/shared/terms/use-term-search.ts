import { useQuery } from "@apollo/client/react";
import { useDeferredValue } from "react";
import type { TermKind } from "#web/shared/apollo/schema-types.graphql.ts";
import { type FoundTermFragment, TermSearchDocument } from "./TermSearch.graphql.ts";

export type FoundTerm = FoundTermFragment;

/**
 * Terms that can be named, by the words typed so far, best first; the last answer stays until the next is there. In the place of one
 * that is one with another stands the one that stands for both.
 */
export function useTermSearch(words: string, kinds: readonly TermKind[]): readonly FoundTerm[] {
  const settled = useDeferredValue(words.trim());
  const { data, previousData } = useQuery(TermSearchDocument, {
    variables: { words: settled, kinds },
    skip: settled === "",
  });
  if (settled === "") return [];
  const found = ((data ?? previousData)?.search ?? []).map(({ term }) => term.mergedInto ?? term);
  return [...new Map(found.map((term) => [term.id, term])).values()];
}
