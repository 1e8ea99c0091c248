import type { RevisionNumber } from "../../domain/revision.ts";
import { nextTurn } from "../../ports/next-turn.ts";
import { allOf, type Condition, used } from "./conditions.ts";
import type { Database, Parameters } from "./database.ts";
import { parseStored } from "./parse-stored.ts";
import { type Kind, resolveRevision } from "./read-things.ts";

const ROWS_AT_ONCE = 500;

/**
 * All that stands at a revision and meets the conditions, a slice in a turn, in the order of the rows: each slice goes on
 * behind the last row of the one before. What names something is read along its names, however many there are.
 */
export async function* sliceThings<Thing>(
  database: Database,
  kind: Kind,
  conditions: readonly Condition[],
  at: RevisionNumber | undefined,
): AsyncGenerator<readonly Thing[]> {
  const revision = await database.read(() => resolveRevision(database, at));
  const driver = conditions.find(({ naming }) => naming !== undefined);
  const rest = conditions.filter((condition) => condition !== driver);
  const parameters: Parameters = Object.assign(
    { at: revision },
    ...conditions.map((condition) => condition.parameters),
  );
  const rows =
    driver === undefined
      ? `SELECT row FROM ${kind} WHERE row > :after ORDER BY row LIMIT ${ROWS_AT_ONCE}`
      : `SELECT DISTINCT naming.row FROM naming WHERE ${driver.naming} AND naming.row > :after
          ORDER BY naming.row LIMIT ${ROWS_AT_ONCE}`;
  const slice = `SELECT thing.body FROM json_each(:rows) AS asked CROSS JOIN ${kind} AS thing ON thing.row = asked.value
    WHERE ${allOf(rest)}`;
  for (let after = 0, isMore = true; isMore; ) {
    const things = await database.read(() => {
      const found = database.all<{ row: number }>(rows, used({ ...parameters, after }, rows));
      after = found.at(-1)?.row ?? after;
      isMore = found.length === ROWS_AT_ONCE;
      return database.all<{ body: string }>(
        slice,
        used({ ...parameters, rows: JSON.stringify(found.map(({ row }) => row)) }, slice),
      );
    });
    if (things.length > 0) yield things.map(({ body }) => parseStored<Thing>(body));
    if (isMore) await nextTurn();
  }
}
