import { useQuery } from "@apollo/client/react";
import { useEffect, useMemo } from "react";
import type { TermKind } from "../apollo/schema-types.graphql.ts";
import { EveryTermDocument, type EveryTermQuery } from "./EveryTerm.graphql.ts";

export type EachTerm = EveryTermQuery["terms"]["edges"][number]["node"];

/** As many as the server gives at once. */
const AT_ONCE = 200;

/** All terms of a kind that there are some hundreds of (regions, kinds of part), read page by page; as far as they are there. */
export function useEveryTerm(kind: TermKind): readonly EachTerm[] {
  const { data, fetchMore } = useQuery(EveryTermDocument, { variables: { kind, first: AT_ONCE } });
  const { hasNextPage = false, endCursor = null } = data?.terms.pageInfo ?? {};
  useEffect(() => {
    // What cannot be read now is read when the page is opened anew.
    if (hasNextPage) fetchMore({ variables: { after: endCursor } }).catch(() => undefined);
  }, [fetchMore, hasNextPage, endCursor]);
  return useMemo(() => data?.terms.edges.map(({ node }) => node) ?? [], [data]);
}
