import type { Page } from "../ports/store.ts";
import type { PlainBuilder } from "./builder.ts";

export interface Edge<Row> {
  readonly cursor: string;
  readonly node: Row;
}
export interface PageInfo {
  readonly hasNextPage: boolean;
  readonly hasPreviousPage: boolean;
  readonly startCursor: string | undefined;
  readonly endCursor: string | undefined;
}
export interface Connection<Row> {
  readonly edges: readonly Edge<Row>[];
  readonly pageInfo: PageInfo;
  readonly totalCount: number;
}

/** A page of the store as a connection; `show` makes the node of a row. `after` is what the page was asked with. */
export function connectionFrom<Row, Shown>(
  page: Page<Row>,
  after: string | null | undefined,
  show: (row: Row) => Shown,
): Connection<Shown> {
  const edges = page.rows.map((row, i) => ({ cursor: page.cursors[i] ?? "", node: show(row) }));
  return {
    edges,
    pageInfo: {
      hasNextPage: page.hasMore,
      hasPreviousPage: typeof after === "string" && edges.length > 0,
      startCursor: edges.at(0)?.cursor,
      endCursor: edges.at(-1)?.cursor,
    },
    totalCount: page.total,
  };
}

/** Names of types that are listed in pages, with what stands behind their nodes. */
type Listed =
  | "Term"
  | "Claim"
  | "Source"
  | "Revision"
  | "HistoryEntry"
  | "Examination"
  | "Disagreement"
  | "Proposal"
  | "Comment"
  | "Dispute";

/** Adds `XEdge` and `XConnection` for a listed type `X`. */
export function addConnection<Row>(b: PlainBuilder, name: Listed) {
  const edge = b.objectRef<Edge<Row>>(`${name}Edge`).implement({
    fields: (t) => ({
      cursor: t.exposeString("cursor"),
      node: t.field({ type: name, resolve: (row) => row.node as never }),
    }),
  });
  return b.objectRef<Connection<Row>>(`${name}Connection`).implement({
    fields: (t) => ({
      edges: t.field({ type: [edge], resolve: (connection) => connection.edges }),
      pageInfo: t.field({ type: "PageInfo", resolve: (connection) => connection.pageInfo }),
      totalCount: t.exposeInt("totalCount"),
    }),
  });
}

/** Adds `PageInfo` (Relay's cursor connections). */
export const addPageInfo = (b: PlainBuilder) =>
  b.objectType("PageInfo", {
    fields: (t) => ({
      hasNextPage: t.exposeBoolean("hasNextPage"),
      hasPreviousPage: t.exposeBoolean("hasPreviousPage"),
      startCursor: t.exposeString("startCursor", { nullable: true }),
      endCursor: t.exposeString("endCursor", { nullable: true }),
    }),
  });
