import { useQuery } from "@apollo/client/react";
import { useDeferredValue } from "react";
import type { TermKind } from "#web/shared/apollo/schema-types.graphql.ts";
import { TermSearchDocument, type TermSearchQuery } from "./TermSearch.graphql.ts";

export type FoundTerm = TermSearchQuery["search"][number]["term"];

/** Terms by the words typed so far, best first; the last answer stays until the next is there. */
export function useTermSearch(words: string, kinds: readonly TermKind[]): readonly FoundTerm[] {
  const settled = useDeferredValue(words.trim());
  const { data, previousData } = useQuery(TermSearchDocument, {
    variables: { words: settled, kinds },
    skip: settled === "",
  });
  if (settled === "") return [];
  return ((data ?? previousData)?.search ?? []).map((hit) => hit.term);
}
