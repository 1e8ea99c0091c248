import { type ChangeTexts, textsOf } from "../../chain/change-text.ts";
import type { Change, Edit } from "../../domain/change.ts";
import type { Claim } from "../../domain/claim.ts";
import type { Standing } from "../../domain/graph-view.ts";
import { namesOf } from "../../domain/names-of.ts";
import type { Revision } from "../../domain/revision.ts";
import type { Database } from "./database.ts";
import { FORMS, insertRows, NAMING, ROW_FORMS, type Row, type RowForm } from "./insert-rows.ts";
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
  const rows = rowsOf(database, change, texts);
  for (const [form, some] of rows) insertRows(database, form, some, number);
  keepTally(database, number, change);
}

/** All that a change adds, by where it goes. */
function rowsOf(database: Database, change: Change, texts: ChangeTexts): ReadonlyMap<RowForm, Row[]> {
  const next = {
    term: nextRow(database, "term"),
    claim: nextRow(database, "claim"),
    source: nextRow(database, "source"),
  };
  const rows = new Map<RowForm, Row[]>(ROW_FORMS.map((form) => [form, []]));
  const add = (form: RowForm, row: Row): void => void rows.get(form)?.push(row);
  for (const [at, edit] of change.entries()) {
    if (!edit.after) continue;
    const row = next[edit.kind]++;
    const standing = { kind: edit.kind, thing: edit.after } as Standing;
    addOwn(add, standing, row, texts.after[at] ?? "");
    for (const { kind, id } of namesOf(standing)) add(NAMING[kind][edit.kind], [id, row]);
  }
  for (const [form, some] of rows) if (form.isClustered) rows.set(form, inOrder(some));
  return rows;
}

const nextRow = (database: Database, kind: Edit["kind"]): number =>
  (database.get<{ last: number | null }>(`SELECT max(row) AS last FROM ${kind}`)?.last ?? 0) + 1;

type Add = (form: RowForm, row: Row) => void;

/** The rows that a thing itself is. */
function addOwn(add: Add, { kind, thing }: Standing, row: number, body: string): void {
  if (kind === "source") add(FORMS.source, [row, thing.id, body]);
  else if (kind === "term") add(FORMS.term, [row, thing.id, thing.kind, thing.broader ?? null, body]);
  else {
    add(FORMS.claim, [row, thing.id, thing.relation, "subject" in thing ? thing.subject : null, body]);
    addRoles(add, thing, row);
  }
}

/** The rows by which the neighbourhood finds a claim. */
function addRoles(add: Add, claim: Claim, row: number): void {
  const accepted = claim.status === "accepted";
  if (claim.relation === "void when") add(FORMS.exception, [claim.of, row, claim.id, Number(accepted)]);
  else if (accepted) {
    add(FORMS.statement, [claim.subject, row, claim.id]);
    if (claim.relation === "requires")
      for (const target of new Set(claim.ways.flat()))
        add(FORMS.lead, [claim.subject, target, row, claim.scope.region ?? null]);
  }
}

/** Rows by their columns, each once: a thing may name another in several places. */
function inOrder(rows: Row[]): Row[] {
  rows.sort(byColumns);
  return rows.filter((row, at) => at === 0 || byColumns(row, rows[at - 1] ?? []) !== 0);
}

/** The first columns, by which no two different rows are the same, are texts or numbers throughout. */
function byColumns(a: Row, b: Row): number {
  for (let at = 0; at < a.length; at++) {
    const [left, right] = [a[at] as string | number, b[at] as string | number];
    if (left !== right) return left < right ? -1 : 1;
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
