import { type BoundedCache, boundedCache } from "../../domain/bounded-cache.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Page, PageAsk } from "../../ports/store.ts";
import { allOf, type Condition, STANDS, used } from "./conditions.ts";
import type { Database, Parameters } from "./database.ts";
import { parseStored } from "./parse-stored.ts";
import { checkFirst, type Kind, resolveRevision } from "./read-things.ts";
import { tallied } from "./tally.ts";

interface Row {
  readonly id: string;
  readonly body: string;
}

/** Names of one thing beyond which its namers are met soon enough among all rows. */
const MANY_NAMES = 5_000;

/**
 * One page of what stands at a revision and meets the conditions, by id. What it costs follows the page: rows that are
 * counted by a column are read along it and not counted again; those that name what few name are read by its names; those
 * that name what very many name, along all ids.
 */
export function listThings<Thing extends { readonly id: string }>(
  database: Database,
  kind: Kind,
  conditions: readonly Condition[],
  page: PageAsk,
  at: RevisionNumber | undefined,
): Page<Thing> {
  const first = checkFirst(page.first);
  const revision = resolveRevision(database, at);
  const given: Parameters = Object.assign(
    { at: revision },
    ...conditions.map((condition) => condition.parameters),
  );
  const parameters = { ...given, after: page.after ?? "", limit: first + 1 };
  const naming = conditions.filter((condition) => condition.naming !== undefined);
  const [only, ...others] = conditions;
  const isCounted = others.length === 0 && (only === undefined || only.counted !== undefined);
  const rows = isCounted
    ? readCounted(database, kind, only?.counted, parameters)
    : isNamedByMany(database, naming, given)
      ? readMatching(database, `${kind} AS thing INDEXED BY ${kind}_by_id`, conditions, parameters)
      : readMatching(database, `${kind} AS thing`, conditions.map(byRows), parameters);
  const shown = rows.slice(0, first);
  return {
    rows: shown.map(({ body }) => parseStored<Thing>(body)),
    cursors: shown.map(({ id }) => id),
    hasMore: rows.length > first,
    total: isCounted
      ? tallied(database, kind, only?.counted?.values, revision)
      : count(database, kind, conditions, given),
  };
}

/** The first rows of each value, laid together. */
function readCounted(
  database: Database,
  kind: Kind,
  counted: Condition["counted"],
  { at, after, limit }: Parameters,
): readonly Row[] {
  const read = (condition: string, value: Parameters): readonly Row[] =>
    database.all<Row>(
      `SELECT thing.id, thing.body FROM ${kind} AS thing
        WHERE ${STANDS} AND ${condition} AND thing.id > :after ORDER BY thing.id LIMIT :limit`,
      { ...value, at: at ?? 0, after: after ?? "", limit: limit ?? 0 },
    );
  if (counted === undefined) return read("TRUE", {});
  return [...new Set(counted.values)]
    .flatMap((value) => read(`thing.${counted.column} = :value`, { value }))
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .slice(0, Number(limit));
}

/** Whether everything that has to be named is named by very many. */
function isNamedByMany(database: Database, naming: readonly Condition[], parameters: Parameters): boolean {
  const areMany = (condition: Condition): boolean =>
    database.get<{ names: number }>(
      `SELECT count(*) AS names FROM (SELECT 1 FROM naming WHERE ${condition.naming} LIMIT ${MANY_NAMES})`,
      used(parameters, condition.naming ?? ""),
    )?.names === MANY_NAMES;
  return naming.length > 0 && naming.every(areMany);
}

const readMatching = (
  database: Database,
  things: string,
  conditions: readonly Condition[],
  parameters: Parameters,
): readonly Row[] =>
  database.all<Row>(
    `SELECT thing.id, thing.body FROM ${things}
      WHERE thing.id > :after AND ${allOf(conditions)} ORDER BY thing.id LIMIT :limit`,
    parameters,
  );

/** `EXISTS` would be asked of each row; a list of rows is read first. */
const byRows = (condition: Condition): Condition =>
  condition.naming === undefined
    ? condition
    : { ...condition, sql: `thing.row IN (SELECT naming.row FROM naming WHERE ${condition.naming})` };

/** Where something is named, its namers are counted by an index that holds what is asked of them. */
function count(
  database: Database,
  kind: Kind,
  conditions: readonly Condition[],
  parameters: Parameters,
): number {
  const driver = conditions.find(({ naming }) => naming !== undefined);
  const rest = conditions.filter((condition) => condition !== driver);
  const from =
    driver === undefined
      ? `${kind} AS thing WHERE`
      : `(SELECT DISTINCT naming.row FROM naming WHERE ${driver.naming}) AS namer
         CROSS JOIN ${kind} AS thing INDEXED BY ${kind}_life ON thing.row = namer.row WHERE`;
  const sql = `SELECT count(*) AS total FROM ${from} ${allOf(rest)}`;
  const asked = used(parameters, sql);
  const key = `${sql} ${JSON.stringify(asked)}`;
  const known = countsOf(database).get(key);
  if (known !== undefined) return known;
  const total = database.get<{ total: number }>(sql, asked)?.total ?? 0;
  countsOf(database).set(key, total);
  return total;
}

/** What was counted lately: at one revision it is always the same. */
const counts = new WeakMap<Database, BoundedCache<string, number>>();
const MOST_COUNTS = 1_000;

function countsOf(database: Database): BoundedCache<string, number> {
  const known = counts.get(database) ?? boundedCache(MOST_COUNTS);
  counts.set(database, known);
  return known;
}
