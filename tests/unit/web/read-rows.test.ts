import { ApolloClient, ApolloLink, gql, Observable, type TypedDocumentNode } from "@apollo/client";
import { describe, expect, it } from "vitest";
import { rowsToFollow } from "#web/proposals/rows-to-follow.ts";
import { makeCache } from "#web/shared/apollo/make-cache.ts";
import { type Page, readRows } from "#web/shared/apollo/read-rows.ts";

interface Told {
  readonly comments: Page & { readonly edges: readonly { readonly node: { readonly id: string } }[] };
}
const query: TypedDocumentNode<Told, { on: string; first: number; after?: string | null }> = gql`
  query Rows($on: ID!, $first: Int!, $after: String) {
    comments(on: $on, first: $first, after: $after) {
      totalCount
      pageInfo { hasNextPage endCursor }
      edges { cursor node { id } }
    }
  }
`;

/** A client of a server that has so many comments and gives at most 200 at once. */
function aServer(count: number) {
  const said = { count };
  const asked: number[] = [];
  const link = new ApolloLink(({ variables: { first, after } }) => {
    if (first > 200 || first < 1) throw new Error(`asked for ${first} at once`);
    asked.push(first);
    const from = after ? Number(after) + 1 : 0;
    const to = Math.min(said.count, from + first);
    const edges = Array.from({ length: to - from }, (_, i) => ({
      ...{ __typename: "Edge", cursor: `${from + i}` },
      node: { __typename: "Comment", id: `c${from + i}` },
    }));
    const pageInfo = { __typename: "PageInfo", hasNextPage: to < said.count, endCursor: `${to - 1}` };
    const comments = { __typename: "Comments", totalCount: said.count, pageInfo, edges };
    return new Observable((observer) => {
      observer.next({ data: { comments } });
      observer.complete();
    });
  });
  const client = new ApolloClient({ link, cache: makeCache() });
  const shown = () => client.readQuery({ query, variables: { on: "p", first: 1 } })?.comments;
  const read = (rows: number, of: number, more = 50) =>
    readRows(client, query, { on: "p" }, "comments", rowsToFollow({ rows, count: of }, more));
  return { said, asked, shown, read };
}

describe("[J11] a list that is read anew", () => {
  it("holds all that came, however many are given at once", async () => {
    const { said, asked, shown, read } = aServer(10);
    await read(0, 0);
    expect(shown()?.edges).toHaveLength(10);
    said.count = 450;
    await read(10, 10);
    expect(shown()?.edges.map(({ node }) => node.id)).toEqual(Array.from({ length: 450 }, (_, i) => `c${i}`));
    expect(shown()?.pageInfo.hasNextPage).toBe(false);
    expect(asked).toEqual([50, 60, 200, 190]);
  });

  it("never shows less while it is read", async () => {
    const { said, shown, read } = aServer(300);
    await read(300, 300);
    said.count = 301;
    const reading = read(300, 300);
    expect(shown()?.edges).toHaveLength(300);
    await reading;
    expect(shown()?.edges).toHaveLength(301);
  });

  it("leaves what nobody read on to, and what is more than a thousand", async () => {
    const { said, shown, read } = aServer(500);
    await read(50, 500);
    expect(shown()?.edges).toHaveLength(100);
    said.count = 5000;
    await read(100, 500);
    expect(shown()?.edges).toHaveLength(1000);
    expect(shown()?.pageInfo.hasNextPage).toBe(true);
    await read(1200, 5000);
    expect(shown()?.edges).toHaveLength(1200);
  });
});
