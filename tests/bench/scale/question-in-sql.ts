import { DatabaseSync, type StatementSync } from "node:sqlite";
import type { BareRow } from "./bare-rows.ts";
import {
  type DatingFinding,
  type DatingPath,
  type DatingQuestion,
  findingsOf,
  numberOf,
} from "./dating-question.ts";

/** Tables made for the question: clustered by subject, whole numbers, the regions above each one written out. */
const TABLES = `
  PRAGMA journal_mode = wal; PRAGMA cache_size = -65536;
  CREATE TABLE lead(s INT, o INT, id INT, region INT, PRIMARY KEY(s, o, id)) WITHOUT ROWID;
  CREATE TABLE date(s INT, id INT, region INT, lo INT, hi INT, PRIMARY KEY(s, id)) WITHOUT ROWID;
  CREATE TABLE region_above(region INT, above INT, PRIMARY KEY(region, above)) WITHOUT ROWID;
  CREATE INDEX region_below ON region_above(above, region);
  BEGIN`;

const SCOPE = `
  above(r) AS MATERIALIZED (SELECT above FROM region_above WHERE region = :region),
  scope(r) AS MATERIALIZED (SELECT r FROM above UNION SELECT region FROM region_above WHERE above = :region)`;
/** Each way by itself, as text: the claims it followed, the terms it came to. */
const WAYS = `
  way(feature, term, depth, via, passed) AS (
    SELECT value, value, 0, '', ' ' || value || ' ' FROM json_each(:features)
    UNION ALL
    SELECT way.feature, lead.o, way.depth + 1, way.via || lead.id || ' ', way.passed || lead.o || ' '
      FROM way CROSS JOIN lead ON lead.s = way.term
     WHERE way.depth < :maxDepth AND (lead.region IS NULL OR lead.region IN scope)
       AND instr(way.passed, ' ' || lead.o || ' ') = 0)`;
const DATES = `way CROSS JOIN date ON date.s = way.term WHERE date.region IS NULL OR date.region IN above`;
const OUT = "date.hi < :first OR date.lo > :last";

type Row = readonly [feature: number, via: string, dated: number, isOut: number];

interface Variant {
  readonly sql: string;
  readonly rows: (statement: StatementSync, parameters: Record<string, string | number>) => readonly Row[];
}

/** Several ways to write it; the fastest counts. */
const VARIANTS: Readonly<Record<string, Variant>> = {
  "rows as arrays": {
    sql: `WITH RECURSIVE ${SCOPE}, ${WAYS} SELECT way.feature, way.via, date.id, ${OUT} FROM ${DATES}`,
    rows: (statement, parameters) => statement.all(parameters) as unknown as readonly Row[],
  },
  "one text": {
    sql: `WITH RECURSIVE ${SCOPE}, ${WAYS}
      SELECT json_group_array(json_array(way.feature, way.via, date.id, ${OUT})) FROM ${DATES}`,
    rows: (statement, parameters) => JSON.parse((statement.all(parameters) as unknown as [[string]])[0][0]),
  },
  "reached first, then ways among the reached": {
    sql: `WITH RECURSIVE ${SCOPE},
      reached(term) AS (
        SELECT value FROM json_each(:features)
        UNION
        SELECT lead.o FROM reached CROSS JOIN lead ON lead.s = reached.term
         WHERE lead.region IS NULL OR lead.region IN scope),
      step(s, o, id) AS MATERIALIZED (
        SELECT lead.s, lead.o, lead.id FROM reached CROSS JOIN lead ON lead.s = reached.term
         WHERE lead.region IS NULL OR lead.region IN scope),
      way(feature, term, depth, via, passed) AS (
        SELECT value, value, 0, '', ' ' || value || ' ' FROM json_each(:features)
        UNION ALL
        SELECT way.feature, step.o, way.depth + 1, way.via || step.id || ' ', way.passed || step.o || ' '
          FROM way JOIN step ON step.s = way.term
         WHERE way.depth < :maxDepth AND instr(way.passed, ' ' || step.o || ' ') = 0)
      SELECT way.feature, way.via, date.id, ${OUT} FROM ${DATES}`,
    rows: (statement, parameters) => statement.all(parameters) as unknown as readonly Row[],
  },
};

export type AskDatabase = (question: DatingQuestion) => readonly DatingFinding[];

/** A database file with bare rows of a graph, and the question in each way to write it. */
export function openQuestionInSql(
  path: string,
  rows: Iterable<BareRow>,
): { readonly ask: Readonly<Record<string, AskDatabase>>; readonly close: () => void } {
  const database = new DatabaseSync(path);
  database.exec(TABLES);
  const region = database.prepare("INSERT INTO region_above VALUES (?, ?)");
  const lead = database.prepare("INSERT INTO lead VALUES (?, ?, ?, ?)");
  const date = database.prepare("INSERT INTO date VALUES (?, ?, ?, ?, ?)");
  for (const row of rows)
    if (row.is === "region") region.run(row.region, row.above);
    else if (row.is === "lead") lead.run(row.s, row.o, row.id, row.region);
    else date.run(row.s, row.id, row.region, row.lo, row.hi);
  database.exec("COMMIT; ANALYZE");
  const asks = Object.entries(VARIANTS).map(([name, { sql, rows: read }]): [string, AskDatabase] => {
    const statement = database.prepare(sql);
    statement.setReturnArrays(true);
    return [name, (question) => findingsOf(question, read(statement, parametersOf(question)).map(pathOf))];
  });
  return { ask: Object.fromEntries(asks), close: () => database.close() };
}

const parametersOf = ({ features, region, claimed, maxDepth }: DatingQuestion) => ({
  features: JSON.stringify(features.map(numberOf)),
  ...{ region: numberOf(region), first: claimed[0], last: claimed[1], maxDepth },
});

const pathOf = ([feature, via, dated, isOut]: Row): DatingPath => ({
  feature,
  via: via === "" ? [] : via.trimEnd().split(" ").map(Number),
  ...{ dated, isOut: isOut === 1 },
});
