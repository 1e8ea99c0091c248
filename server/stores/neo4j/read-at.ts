import { deepFreeze } from "../../domain/deep-freeze.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import { LARGEST_PAGE } from "../../ports/store.ts";
import type { Database, Parameters } from "./database.ts";
import { NEWEST } from "./newest.ts";

/**
 * Begins a statement that reads at a revision: `$at`, or the newest. All of it sees one state, as rows are valid from one
 * revision until another and a newer one can only add to them.
 */
const AT = `${NEWEST}
WITH revision AS newest, coalesce($at, revision) AS at`;

/** A statement that reads at a revision; `body` is what follows in a subquery that sees `at`, and returns one row. */
export const readStatement = (body: string): string => `${AT}\nCALL (at) {\n${body}\n}\nRETURN *`;

/** Tells, in a statement, whether a version stands at the revision. */
export const standsAt = (version: string): string => `${version}.since <= at AND at < ${version}.until`;

/**
 * Reads one row at a revision, or the newest. Throws a RangeError if there is no such revision.
 */
export async function readAt<Row extends object>(
  database: Database,
  at: RevisionNumber | undefined,
  body: string,
  parameters: Parameters = {},
): Promise<Row & { readonly at: RevisionNumber }> {
  if (at !== undefined && !(Number.isInteger(at) && at >= 0))
    throw new RangeError(`There is no revision ${at}`);
  const [row] = await database.read<Row & { at: number; newest: number }>(readStatement(body), {
    at: at ?? null,
    ...parameters,
  });
  if (row === undefined) throw new Error("The node of the store is gone");
  if (row.at > row.newest) throw new RangeError(`There is no revision ${at}; the newest is ${row.newest}`);
  return row;
}

/** A stored body as a value that can be shared. */
export const parseBody = <Thing>(body: string): Thing => deepFreeze(JSON.parse(body) as Thing);

/** Throws a RangeError unless a page may hold so many rows. */
export function checkFirst(first: number): number {
  if (Number.isInteger(first) && first >= 1 && first <= LARGEST_PAGE) return first;
  throw new RangeError(`A page holds 1 to ${LARGEST_PAGE} rows, not ${first}`);
}
