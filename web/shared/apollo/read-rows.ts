import type { ApolloClient, OperationVariables, TypedDocumentNode } from "@apollo/client";

/** A page of a list, as the server gives it. */
export interface Page {
  readonly totalCount: number;
  readonly pageInfo: { readonly hasNextPage: boolean; readonly endCursor: string | null };
  readonly edges: readonly unknown[];
}

/** As many as the server gives at once. */
const AT_ONCE = 200;

/**
 * Reads the first rows of a list anew past the cache, page by page, and puts them into the cache together, so that nothing of what
 * is shown goes away meanwhile. `wanted` says how many rows, by how many there are; `field` is where the list stands in an answer.
 * Rejects as the client does.
 */
export async function readRows<Data, Variables extends OperationVariables>(
  client: ApolloClient,
  query: TypedDocumentNode<Data, Variables>,
  variables: Omit<Variables, "first" | "after">,
  field: keyof Data,
  wanted: (totalCount: number) => number,
): Promise<void> {
  const edges: unknown[] = [];
  for (let [first, after] = [Math.min(AT_ONCE, wanted(0)), null as string | null]; ; ) {
    const asked = { ...variables, first, after } as unknown as Variables;
    const { data } = await client.query<Data, OperationVariables>({
      query,
      variables: asked,
      fetchPolicy: "no-cache",
    });
    const page = data?.[field] as Page | undefined;
    if (page === undefined) return;
    const { totalCount, pageInfo, edges: more } = page;
    edges.push(...more);
    first = Math.min(AT_ONCE, wanted(totalCount) - edges.length);
    after = pageInfo.endCursor;
    if (pageInfo.hasNextPage && first > 0) continue;
    const all = { ...variables, first: edges.length, after: null } as unknown as Variables;
    const joined = { ...data, [field]: { ...page, edges } } as Data;
    client.writeQuery<Data, OperationVariables>({ query, variables: all, data: joined });
    return;
  }
}
