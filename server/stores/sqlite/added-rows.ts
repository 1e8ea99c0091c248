import type { ChangeTexts } from "../../chain/change-text.ts";
import type { Change, Edit } from "../../domain/change.ts";
import type { Claim } from "../../domain/claim.ts";
import type { Standing } from "../../domain/graph-view.ts";
import { namesOf } from "../../domain/names-of.ts";
import type { Value } from "./database.ts";
import { FORMS, type ManyRows, NAMING, ROW_FORMS, type RowForm } from "./insert-rows.ts";

/** The numbers that the next rows of each kind get. */
export type NextRows = Record<Edit["kind"], number>;

type Row = readonly Value[];
type Add = (form: RowForm, row: Row) => void;

/**
 * All rows that a change adds; counts `next` on. Rows of the tables that are clustered by what they are about go in by their
 * order there, so that neighbours meet the same page.
 */
export function addedRows(change: Change, texts: ChangeTexts, next: NextRows): ManyRows {
  const clustered = new Map<RowForm, Row[]>();
  const values = new Map<RowForm, Value[]>();
  for (const form of ROW_FORMS)
    if (form.isClustered) clustered.set(form, []);
    else values.set(form, []);
  const add: Add = (form, row) => {
    if (form.isClustered) clustered.get(form)?.push(row);
    else values.get(form)?.push(...row);
  };
  for (const [at, edit] of change.entries()) {
    if (!edit.after) continue;
    const row = next[edit.kind]++;
    const standing = { kind: edit.kind, thing: edit.after } as Standing;
    addOwn(add, standing, row, texts.after[at] ?? "");
    for (const { kind, id } of namesOf(standing)) add(NAMING[kind][edit.kind], [id, row]);
  }
  return ROW_FORMS.map((form) => values.get(form) ?? inOrder(clustered.get(form) ?? []));
}

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

/** The values of rows by their columns, each row once: a thing may name another in several places. */
function inOrder(rows: Row[]): Value[] {
  rows.sort(byColumns);
  const values: Value[] = [];
  let last: Row = [];
  for (const row of rows) {
    if (byColumns(row, last) === 0 && last.length > 0) continue;
    values.push(...row);
    last = row;
  }
  return values;
}

/** The first columns, by which no two different rows are the same, are texts or numbers throughout. */
function byColumns(a: Row, b: Row): number {
  for (let at = 0; at < a.length; at++) {
    const [left, right] = [a[at] as string | number, b[at] as string | number];
    if (left !== right) return left < right ? -1 : 1;
  }
  return 0;
}
