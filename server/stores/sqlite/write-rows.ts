import { type ChangeTexts, textsOf } from "../../chain/change-text.ts";
import type { Change, Edit } from "../../domain/change.ts";
import type { Claim } from "../../domain/claim.ts";
import { compareText } from "../../domain/compare.ts";
import type { Standing } from "../../domain/graph-view.ts";
import { namesOf } from "../../domain/names-of.ts";
import type { Revision } from "../../domain/revision.ts";
import type { Database, Value } from "./database.ts";
import { STILL_STANDS } from "./migrations.ts";
import { keepTally } from "./tally.ts";

/**
 * Writes a revision with its change, ends the rows it replaces and adds the new ones. Inside a write. The rows of the
 * tables that are clustered by what they are about go in by their order there, so that neighbours meet the same page.
 */
export function writeRevision(
  database: Database,
  revision: Revision,
  change: Change,
  texts: ChangeTexts = textsOf(change),
): void {
  const { number, at, by, message, content, previous, hash } = revision;
  database.put(
    `INSERT INTO revision (number, at, by, message, content, previous, hash, change) VALUES (?, ?, ?, ?, ?, ?, ?, ?)`,
    [number, at, by, message, content, previous, hash, texts.change],
  );
  for (const { kind, before } of change) if (before) endRow(database, kind, before.id, number);
  const rows = rowsOf(database, change, texts, number);
  for (const [table, values] of rows) {
    const insert = INSERTS[table];
    for (const row of values) database.put(insert, row);
  }
  keepTally(database, number, change);
}

const insertInto = (table: string, columns: string): string =>
  `INSERT INTO ${table} (${columns}) VALUES (${columns.replaceAll(/\w+/g, "?")})`;
/** The tables in the order in which they are filled. */
const INSERTS = {
  term: insertInto("term", "row, id, since, until, kind, broader, body"),
  claim: insertInto("claim", "row, id, since, until, relation, subject, body"),
  source: insertInto("source", "row, id, since, until, body"),
  statement: insertInto("statement", "subject, row, claim, since, until"),
  lead: insertInto("lead", "subject, target, row, region, since, until"),
  exception: insertInto("exception", "of, row, claim, accepted, since, until"),
  naming: insertInto("naming", "kind, named, by, row, since"),
} as const;
type Table = keyof typeof INSERTS;
type Row = readonly Value[];
type Rows = Record<Table, Row[]>;

/** All that a change adds, table by table. */
function rowsOf(
  database: Database,
  change: Change,
  texts: ChangeTexts,
  since: number,
): readonly (readonly [Table, readonly Row[]])[] {
  const next = {
    term: nextRow(database, "term"),
    claim: nextRow(database, "claim"),
    source: nextRow(database, "source"),
  };
  const rows: Rows = { term: [], claim: [], source: [], statement: [], lead: [], exception: [], naming: [] };
  for (const [at, edit] of change.entries()) {
    if (!edit.after) continue;
    const row = next[edit.kind]++;
    const standing = { kind: edit.kind, thing: edit.after } as Standing;
    addOwn(rows, standing, [row, edit.after.id, since, STILL_STANDS], texts.after[at] ?? "");
    addNames(rows, standing, row, since);
  }
  for (const table of ["statement", "lead", "exception", "naming"] as const) rows[table].sort(byColumns);
  return Object.entries(rows) as unknown as readonly (readonly [Table, readonly Row[]])[];
}

const nextRow = (database: Database, kind: Edit["kind"]): number =>
  (database.get<{ last: number | null }>(`SELECT max(row) AS last FROM ${kind}`)?.last ?? 0) + 1;

/** The rows that a thing itself is; `life` is row, id, since and until. */
function addOwn(rows: Rows, { kind, thing }: Standing, life: Row, body: string): void {
  if (kind === "source") rows.source.push([...life, body]);
  else if (kind === "term") rows.term.push([...life, thing.kind, thing.broader ?? null, body]);
  else {
    rows.claim.push([...life, thing.relation, "subject" in thing ? thing.subject : null, body]);
    addRoles(rows, thing, life);
  }
}

/** The rows by which the neighbourhood finds a claim. */
function addRoles(rows: Rows, claim: Claim, [row = null, , since = null, until = null]: Row): void {
  const accepted = claim.status === "accepted";
  if (claim.relation === "void when")
    rows.exception.push([claim.of, row, claim.id, Number(accepted), since, until]);
  else if (accepted) {
    rows.statement.push([claim.subject, row, claim.id, since, until]);
    if (claim.relation === "requires")
      for (const target of new Set(claim.ways.flat()))
        rows.lead.push([claim.subject, target, row, claim.scope.region ?? null, since, until]);
  }
}

function addNames(rows: Rows, namer: Standing, row: number, since: number): void {
  const seen = new Set<string>();
  for (const { kind, id } of namesOf(namer)) {
    const key = `${kind} ${id}`;
    if (!seen.has(key)) rows.naming.push([kind, id, namer.kind, row, since]);
    seen.add(key);
  }
}

function byColumns(a: Row, b: Row): number {
  for (let at = 0; at < a.length; at++) {
    const [left, right] = [a[at], b[at]];
    if (left === right) continue;
    if (typeof left === "number" && typeof right === "number") return left - right;
    return compareText(String(left), String(right));
  }
  return 0;
}

function endRow(database: Database, kind: Edit["kind"], id: string, until: number): void {
  const stands = { id, stands: STILL_STANDS, until };
  if (kind === "claim") {
    const row = `(SELECT row FROM claim WHERE id = :id AND until = :stands)`;
    database.run(
      `UPDATE statement SET until = :until
        WHERE subject = (SELECT subject FROM claim WHERE id = :id AND until = :stands) AND row = ${row}`,
      stands,
    );
    database.run(
      `UPDATE lead SET until = :until
        WHERE subject = (SELECT subject FROM claim WHERE id = :id AND until = :stands) AND row = ${row}`,
      stands,
    );
    database.run(
      `UPDATE exception SET until = :until
        WHERE of = (SELECT body ->> 'of' FROM claim WHERE id = :id AND until = :stands) AND row = ${row}`,
      stands,
    );
  }
  database.run(`UPDATE ${kind} SET until = :until WHERE id = :id AND until = :stands`, stands);
}
