import type { RevisionNumber } from "../../domain/revision.ts";
import { nextTurn } from "../../ports/next-turn.ts";
import { allOf, type Condition, used } from "./conditions.ts";
import type { Database, Parameters } from "./database.ts";
import { parseStored } from "./parse-stored.ts";
import { type Kind, resolveRevision } from "./read-things.ts";

const ROWS_AT_ONCE = 500;

/** Rows that an index finds, beyond which they are met soon enough among all. */
const FEW = 5_000;

/**
 * All that stands at a revision and meets the conditions, a slice in a turn, in the order of the rows: each slice goes on
 * behind the last row of the one before. What names something is read along its names, however many there are; what an index
 * finds to be few, by that index.
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
  const few = await database.read(() => findFew(database, kind, conditions, parameters));
  const rows =
    driver === undefined
      ? `SELECT row FROM ${kind} WHERE row > :after ORDER BY row LIMIT ${ROWS_AT_ONCE}`
      : `SELECT DISTINCT naming.row FROM naming WHERE ${driver.naming} AND naming.row > :after
          ORDER BY naming.row LIMIT ${ROWS_AT_ONCE}`;
  const slice = `SELECT thing.body FROM json_each(:rows) AS asked CROSS JOIN ${kind} AS thing ON thing.row = asked.value
    WHERE ${allOf(few === undefined ? rest : conditions)}`;
  const rowsAfter = (after: number): readonly { readonly row: number }[] =>
    few === undefined
      ? database.all<{ row: number }>(rows, used({ ...parameters, after }, rows))
      : few.filter(({ row }) => row > after).slice(0, ROWS_AT_ONCE);
  for (let after = 0, isMore = true; isMore; ) {
    const things = await database.read(() => {
      const found = rowsAfter(after);
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

/** All rows of which an index knows that they can meet the conditions, where they are few; whether they stand is not looked at. */
function findFew(
  database: Database,
  kind: Kind,
  conditions: readonly Condition[],
  parameters: Parameters,
): readonly { readonly row: number }[] | undefined {
  for (const { index, sql } of conditions) {
    if (index === undefined) continue;
    const indexed = `SELECT thing.row FROM ${kind} AS thing INDEXED BY ${index} WHERE ${sql} LIMIT ${FEW}`;
    const found = database.all<{ row: number }>(indexed, used(parameters, indexed));
    if (found.length < FEW) return found.toSorted((a, b) => a.row - b.row);
  }
  return undefined;
}
