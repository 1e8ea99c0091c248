import neo4j, { type Driver } from "neo4j-driver";
import type { RunningNeo4j } from "#tests/support/neo4j/found-neo4j.ts";
import type { BareRow } from "./bare-rows.ts";
import {
  type DatingFinding,
  type DatingPath,
  type DatingQuestion,
  findingsOf,
  numberOf,
} from "./dating-question.ts";

/** Nodes made for the question: claims as nodes, as the engine keeps them, and shortcuts past them, as it could do without. */
const INDEXES = [
  "CREATE CONSTRAINT bare_concept IF NOT EXISTS FOR (c:Concept) REQUIRE c.n IS UNIQUE",
  "CREATE CONSTRAINT bare_region IF NOT EXISTS FOR (r:Region) REQUIRE r.n IS UNIQUE",
];
const LOADS: Readonly<Record<BareRow["is"], string>> = {
  region: `UNWIND $rows AS row MERGE (r:Region {n: row.region}) MERGE (a:Region {n: row.above}) CREATE (r)-[:IN]->(a)`,
  lead: `UNWIND $rows AS row MERGE (s:Concept {n: row.s}) MERGE (o:Concept {n: row.o})
    CREATE (s)-[:SUBJECT_OF]->(:Lead {id: row.id, region: row.region})-[:HAS_OBJECT]->(o)
    CREATE (s)-[:NEEDS {id: row.id, region: row.region}]->(o)`,
  date: `UNWIND $rows AS row MERGE (s:Concept {n: row.s})
    CREATE (s)-[:DATED]->(:Date {id: row.id, region: row.region, lo: row.lo, hi: row.hi})`,
};

const SCOPE = `MATCH (asked:Region {n: $region})
  WITH COLLECT { MATCH (asked)-[:IN]->(above) RETURN above.n } AS above, COLLECT { MATCH (asked)<-[:IN]-(below) RETURN below.n } AS below
  WITH above, above + below AS scope`;
/** Where a way ends; \`claims\` are the ids it followed. */
const ends = (term: string, claims: string): string => `
  MATCH (${term})-[:DATED]->(d:Date WHERE d.region IS NULL OR d.region IN above)
  RETURN f.n, ${claims}, d.id, d.hi < $first OR d.lo > $last`;

/** Several ways to write it; the fastest counts. None comes to a term twice. */
const VARIANTS: Readonly<Record<string, (maxDepth: number) => string>> = {
  "over relationships": (maxDepth) => `${SCOPE}
    MATCH (f:Concept WHERE f.n IN $features)
    MATCH (f) ((a)-[r:NEEDS WHERE r.region IS NULL OR r.region IN scope]->(b)){0,${maxDepth}} (x)
    WHERE all(i IN range(0, size(b) - 1) WHERE NOT b[i] IN a[0..i + 1])
    ${ends("x", "[step IN r | step.id]")}`,
  "over relationships, of variable length": (maxDepth) => `${SCOPE}
    MATCH (f:Concept WHERE f.n IN $features)
    MATCH way = (f)-[r:NEEDS*0..${maxDepth}]->(x)
    WHERE all(step IN r WHERE step.region IS NULL OR step.region IN scope)
      AND all(i IN range(1, length(way)) WHERE NOT nodes(way)[i] IN nodes(way)[0..i])
    ${ends("x", "[step IN r | step.id]")}`,
  "over claims as nodes": (maxDepth) => `${SCOPE}
    MATCH (f:Concept WHERE f.n IN $features)
    MATCH (f) ((a:Concept)-[:SUBJECT_OF]->(k:Lead WHERE k.region IS NULL OR k.region IN scope)-[:HAS_OBJECT]->(b:Concept)){0,${maxDepth}} (x)
    WHERE all(i IN range(0, size(b) - 1) WHERE NOT b[i] IN a[0..i + 1])
    ${ends("x", "[step IN k | step.id]")}`,
  "over claims as nodes, in one list": (maxDepth) => `${SCOPE}
    MATCH (f:Concept WHERE f.n IN $features)
    MATCH (f) ((a:Concept)-[:SUBJECT_OF]->(k:Lead WHERE k.region IS NULL OR k.region IN scope)-[:HAS_OBJECT]->(b:Concept)){0,${maxDepth}} (x)-[:DATED]->(d:Date WHERE d.region IS NULL OR d.region IN above)
    WHERE all(i IN range(0, size(b) - 1) WHERE NOT b[i] IN a[0..i + 1])
    RETURN collect([f.n, [step IN k | step.id], d.id, d.hi < $first OR d.lo > $last])`,
  "over relationships, in one list": (maxDepth) => `${SCOPE}
    MATCH (f:Concept WHERE f.n IN $features)
    MATCH (f) ((a)-[r:NEEDS WHERE r.region IS NULL OR r.region IN scope]->(b)){0,${maxDepth}} (x)-[:DATED]->(d:Date WHERE d.region IS NULL OR d.region IN above)
    WHERE all(i IN range(0, size(b) - 1) WHERE NOT b[i] IN a[0..i + 1])
    RETURN collect([f.n, [step IN r | step.id], d.id, d.hi < $first OR d.lo > $last])`,
};

export type AskServer = (question: DatingQuestion) => Promise<readonly DatingFinding[]>;

export interface QuestionInCypher {
  readonly ask: Readonly<Record<string, AskServer>>;
  close(): Promise<void>;
}

const ROWS_AT_ONCE = 10_000;

/** Bare rows of a graph on a server, unless they are there already, and the question in each way to write it. */
export async function openQuestionInCypher(
  server: RunningNeo4j,
  rows: () => Iterable<BareRow>,
): Promise<QuestionInCypher> {
  const { host, user, password, database } = server;
  const driver = neo4j.driver(`bolt://${host}`, neo4j.auth.basic(user, password), {
    ...{ telemetryDisabled: true, disableLosslessIntegers: true },
  });
  const run = (cypher: string, parameters: object = {}) =>
    driver.executeQuery(cypher, parameters, { database });
  const { records } = await run("MATCH (d:Date) RETURN d LIMIT 1");
  if (records.length === 0) await load(run, rows());
  return { ask: asksOf(driver, database), close: () => driver.close() };
}

async function load(run: (cypher: string, parameters?: object) => Promise<unknown>, rows: Iterable<BareRow>) {
  for (const statement of INDEXES) await run(statement);
  await run("CALL db.awaitIndexes(300)");
  const waiting: Record<BareRow["is"], BareRow[]> = { region: [], lead: [], date: [] };
  for (const row of rows) {
    const same = waiting[row.is];
    same.push(row);
    if (same.length === ROWS_AT_ONCE) await run(LOADS[row.is], { rows: wholeNumbers(same.splice(0)) });
  }
  for (const is of ["region", "lead", "date"] as const)
    if (waiting[is].length > 0) await run(LOADS[is], { rows: wholeNumbers(waiting[is]) });
  await run("CALL db.prepareForReplanning()");
  await run("CALL db.clearQueryCaches()");
}

/** Numbers of JavaScript go to the server as floats unless they are told to be whole. */
const wholeNumbers = (rows: readonly BareRow[]): readonly object[] =>
  rows.map((row) =>
    Object.fromEntries(
      Object.entries(row).map(([key, value]) => [key, typeof value === "number" ? neo4j.int(value) : value]),
    ),
  );

type Answer = readonly [feature: number, via: readonly number[], dated: number, isOut: boolean];

function asksOf(driver: Driver, database: string): Readonly<Record<string, AskServer>> {
  const asks = Object.entries(VARIANTS).map(([name, cypherFor]): [string, AskServer] => [
    name,
    async (question) => {
      const { features, region, claimed, maxDepth } = question;
      const { records } = await driver.executeQuery(
        cypherFor(maxDepth),
        {
          ...{
            features: features.map((feature) => neo4j.int(numberOf(feature))),
            region: neo4j.int(numberOf(region)),
          },
          ...{ first: neo4j.int(claimed[0]), last: neo4j.int(claimed[1]) },
        },
        { database, routing: neo4j.routing.READ },
      );
      const rows = name.endsWith("in one list")
        ? (records[0]?.get(0) as Answer[])
        : records.map((record) => record.values() as unknown as Answer);
      return findingsOf(
        question,
        [...rows].map((row) => pathOf([...row] as unknown as Answer)),
      );
    },
  ]);
  return Object.fromEntries(asks);
}

const pathOf = ([feature, via, dated, isOut]: Answer): DatingPath => ({ feature, via, dated, isOut });
