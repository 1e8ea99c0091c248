import type { RevisionNumber } from "../../domain/revision.ts";
import { type Tally, tallyKey } from "../../domain/tally.ts";
import type { Database, Run } from "./database.ts";
import { readChange } from "./revisions.ts";
import { KINDS, LABELS } from "./version-row.ts";

/** Inside a write or outside. */
type Ask = Database["read"] | Run;

/** What stands at a revision, as it is kept with it; counted where a program wrote it that kept no count. */
export async function readTally(ask: Ask, revision: RevisionNumber): Promise<Tally> {
  if (revision === 0) return {};
  const [row] = await ask<{ tally: string | null }>(
    "MATCH (r:Revision {store: $store, number: $revision}) RETURN r.tally AS tally",
    { revision },
  );
  return typeof row?.tally === "string" ? (JSON.parse(row.tally) as Tally) : countStanding(ask, revision);
}

async function countStanding(ask: Ask, at: RevisionNumber): Promise<Tally> {
  const tally: Record<string, number> = {};
  for (const kind of KINDS) {
    const rows = await ask<{ what: string | null; count: number }>(
      `MATCH (v:${LABELS[kind]}Version {store: $store}) WHERE 0 < v.since <= $at AND $at < v.until
       RETURN ${kind === "source" ? "null" : `v.${kind === "term" ? "kind" : "relation"}`} AS what, count(v) AS count`,
      { at },
    );
    for (const { what, count } of rows)
      for (const key of new Set([tallyKey(kind), tallyKey(kind, what ?? undefined)]))
        tally[key] = (tally[key] ?? 0) + count;
  }
  return tally;
}

/** How many edits each of these revisions has; one that there is not is left out. */
export async function readEditCounts(
  database: Database,
  revisions: readonly RevisionNumber[],
): Promise<ReadonlyMap<RevisionNumber, number>> {
  const rows = await database.read<{ revision: number; edits: number | null }>(
    `MATCH (s:Store {name: $store}) MATCH (r:Revision) WHERE r.store = $store AND r.number IN $revisions
       AND r.number <= s.revision
     RETURN r.number AS revision, r.edits AS edits ORDER BY revision`,
    { revisions: [...new Set(revisions)] },
  );
  const counts = new Map<RevisionNumber, number>();
  for (const { revision, edits } of rows)
    counts.set(revision, edits ?? (await readChange(database, revision)).length);
  return counts;
}
