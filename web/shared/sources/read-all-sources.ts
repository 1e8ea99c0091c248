import type { ApolloClient } from "@apollo/client";
import type { CslItem } from "#server/domain/source.ts";
import { AllSourcesDocument, type AllSourcesQuery } from "./AllSources.graphql.ts";

const SOURCES_AT_ONCE = 200;

/** The items of all sources, by id of the source, read page by page past the cache. Rejects as the client does. */
export async function readAllSources(client: ApolloClient): Promise<readonly CslItem[]> {
  const items: CslItem[] = [];
  for (let after: string | null = null, isMore = true; isMore; ) {
    const answer: { data?: AllSourcesQuery | undefined } = await client.query({
      query: AllSourcesDocument,
      variables: { first: SOURCES_AT_ONCE, after },
      fetchPolicy: "no-cache",
    });
    const page = answer.data?.sources;
    for (const { node } of page?.edges ?? []) items.push({ ...JSON.parse(node.csl), id: node.id });
    after = page?.pageInfo.endCursor ?? null;
    isMore = page?.pageInfo.hasNextPage ?? false;
  }
  return items;
}
