import type { RevisionNumber } from "../../domain/revision.ts";
import { nextTurn } from "../../ports/next-turn.ts";
import type { Database } from "./database.ts";
import { parseStored } from "./parse-stored.ts";
import { type Condition, type Kind, resolveRevision } from "./read-things.ts";

const ROWS_AT_ONCE = 500;

/**
 * All that stands at a revision and meets the conditions, a slice in a turn, in the order of the rows: each slice goes on
 * behind the last row of the one before. What names `naming` is read along the index of names, however much that is.
 */
export async function* sliceThings<Thing>(
  database: Database,
  kind: Kind,
  { conditions, naming }: { readonly conditions: readonly Condition[]; readonly naming?: string | undefined },
  at: RevisionNumber | undefined,
): AsyncGenerator<readonly Thing[]> {
  const from =
    naming === undefined
      ? `${kind} AS thing`
      : `naming CROSS JOIN ${kind} AS thing ON thing.row = naming.row`;
  const row = naming === undefined ? "thing.row" : "naming.row";
  const wanted = [
    ...(naming === undefined
      ? []
      : [`naming.kind = 'term' AND naming.named = :naming AND naming.by = '${kind}'`]),
    ...["thing.since <= :at AND :at < thing.until", `${row} > :after`],
    ...conditions.map(({ sql }) => sql),
  ].join(" AND ");
  const parameters = Object.assign(
    { at: await database.read(() => resolveRevision(database, at)) },
    naming === undefined ? {} : { naming },
    ...conditions.map((condition) => condition.parameters),
  );
  for (let after = 0, isMore = true; isMore; ) {
    const rows = await database.read(() =>
      database.all<{ row: number; body: string }>(
        `SELECT thing.row, thing.body FROM ${from} WHERE ${wanted} ORDER BY ${row} LIMIT ${ROWS_AT_ONCE}`,
        { ...parameters, after },
      ),
    );
    after = rows.at(-1)?.row ?? after;
    isMore = rows.length === ROWS_AT_ONCE;
    if (rows.length > 0) yield rows.map(({ body }) => parseStored<Thing>(body));
    if (isMore) await nextTurn();
  }
}
