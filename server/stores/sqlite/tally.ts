import type { RevisionNumber } from "../../domain/revision.ts";
import { type Tally, tallyKey } from "../../domain/tally.ts";
import type { Database } from "./database.ts";
import type { Kind } from "./read-things.ts";

/** What a revision's number of edits is kept under, beside what stands from it on. */
const EDITS = "edits";

/**
 * Counts what stands after a revision of so many edits, by which there are `more`, so that nobody has to count it to say how many
 * rows a list has. Inside a write.
 */
export function keepTally(database: Database, revision: RevisionNumber, more: Tally, edits: number): void {
  const keep = (what: string, total: number): void =>
    database.put("INSERT INTO tally (what, revision, total) VALUES (?, ?, ?)", [what, revision, total]);
  for (const [what, count] of Object.entries(more))
    keep(what, totalOf(database, [what], revision - 1) + count);
  keep(EDITS, edits);
}

/** How many things of a kind stand at a revision: all of them, or those counted under one of these. */
export const tallied = (
  database: Database,
  kind: Kind,
  under: readonly string[] | undefined,
  at: RevisionNumber,
): number => totalOf(database, under?.map((what) => tallyKey(kind, what)) ?? [tallyKey(kind)], at);

const totalOf = (database: Database, whats: readonly string[], at: RevisionNumber): number =>
  database.get<{ total: number }>(
    `SELECT coalesce(sum((
        SELECT total FROM tally WHERE what = asked.value AND revision <= :at
         ORDER BY revision DESC LIMIT 1)), 0) AS total
      FROM (SELECT DISTINCT value FROM json_each(:whats)) AS asked`,
    { whats: JSON.stringify(whats), at },
  )?.total ?? 0;

/** How many edits each of these revisions has; one that there is not is left out. */
export const readEditCounts = (
  database: Database,
  revisions: readonly RevisionNumber[],
): ReadonlyMap<RevisionNumber, number> =>
  new Map(
    database
      .all<{ revision: number; total: number }>(
        `SELECT tally.revision, tally.total FROM (SELECT DISTINCT value FROM json_each(:revisions)) AS asked
          CROSS JOIN tally ON tally.what = '${EDITS}' AND tally.revision = asked.value ORDER BY tally.revision`,
        { revisions: JSON.stringify(revisions) },
      )
      .map(({ revision, total }) => [revision, total]),
  );
