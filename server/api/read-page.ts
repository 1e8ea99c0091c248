import type { RevisionNumber } from "../domain/revision.ts";
import type { Page, PageAsk } from "../ports/store.ts";
import { type AsOf, asOf } from "./as-of.ts";
import { type Connection, connectionFrom } from "./connection.ts";

/** The arguments of a connection. The cost rule has refused a `first` that no page can have. */
export interface PageArgs {
  readonly first: number;
  readonly after?: string | null | undefined;
}

/** The arguments as the use cases take them. */
export const pageAsk = ({ first, after }: PageArgs): PageAsk => ({
  first,
  ...(typeof after === "string" ? { after } : {}),
});

/** Reads a page of the graph on a revision as a connection whose rows are marked with that revision. */
export async function readPageOn<Row>(
  at: RevisionNumber | undefined,
  args: PageArgs,
  read: (page: PageAsk, at: RevisionNumber | undefined) => Promise<Page<Row>>,
): Promise<Connection<AsOf<Row>>> {
  return connectionFrom(await read(pageAsk(args), at), args.after, (row) => asOf(row, at));
}

/** Reads a page of what has no revision as a connection. */
export async function readPage<Row>(
  args: PageArgs,
  read: (page: PageAsk) => Promise<Page<Row>>,
): Promise<Connection<Row>> {
  return connectionFrom(await read(pageAsk(args)), args.after, (row) => row);
}
