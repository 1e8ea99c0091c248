import { compareIds } from "../../domain/compare.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import { LARGEST_PAGE } from "../../ports/store.ts";
import type { Database } from "./database.ts";
import { parseStored } from "./parse-stored.ts";

export type Kind = "term" | "claim" | "source";

/** The revision to read at. Throws a RangeError if there is no such revision. */
export function resolveRevision(database: Database, at: RevisionNumber | undefined): RevisionNumber {
  const newest = database.get<{ newest: number }>("SELECT max(number) AS newest FROM revision")?.newest ?? 0;
  if (at === undefined) return newest;
  if (!(Number.isInteger(at) && at >= 0 && at <= newest))
    throw new RangeError(`There is no revision ${at}; the newest is ${newest}`);
  return at;
}

/** Those of these ids that stand at a revision, by id. */
export function readThings<Thing extends { readonly id: string }>(
  database: Database,
  kind: Kind,
  ids: readonly Thing["id"][],
  at: RevisionNumber | undefined,
): ReadonlyMap<Thing["id"], Thing> {
  // One text for all of them: a row each, and a parse each, take half as long again.
  const bodies = database.get<{ list: string }>(
    `SELECT '[' || ifnull(group_concat(thing.body), '') || ']' AS list FROM json_each(:ids) AS asked
      CROSS JOIN ${kind} AS thing ON thing.id = asked.value
      WHERE thing.since <= :at AND :at < thing.until`,
    { ids: JSON.stringify([...new Set(ids)]), at: resolveRevision(database, at) },
  );
  const things = parseStored<Thing[]>(bodies?.list ?? "[]");
  return new Map(things.toSorted(compareIds).map((thing) => [thing.id, thing]));
}

/** Throws a RangeError unless a page may hold so many rows. */
export function checkFirst(first: number): number {
  if (Number.isInteger(first) && first >= 1 && first <= LARGEST_PAGE) return first;
  throw new RangeError(`A page holds 1 to ${LARGEST_PAGE} rows, not ${first}`);
}
