import type { Change, Edit } from "../../domain/change.ts";
import type { Claim } from "../../domain/claim.ts";
import type { Standing } from "../../domain/graph-view.ts";
import { namesOf } from "../../domain/names-of.ts";
import type { Value } from "./database.ts";
import { FORMS, type ManyRows, NAMING, ROW_FORMS, type RowForm } from "./insert-rows.ts";

/** The numbers that the next rows of each kind get. */
export type NextRows = Record<Edit["kind"], number>;

type Add = (form: RowForm, row: readonly Value[]) => void;

/**
 * All rows that a change adds; counts `next` on. `bodies` stand in the rows for what each edit leaves standing. Rows of the tables
 * that are clustered by what they are about come by their order there, so that neighbours meet the same page.
 */
export function addedRows(change: Change, bodies: readonly (Value | undefined)[], next: NextRows): ManyRows {
  const values = new Map<RowForm, Value[]>(ROW_FORMS.map((form) => [form, []]));
  const add: Add = (form, row) => void values.get(form)?.push(...row);
  for (const [at, edit] of change.entries()) {
    if (!edit.after) continue;
    const row = next[edit.kind]++;
    const standing = { kind: edit.kind, thing: edit.after } as Standing;
    addOwn(add, standing, row, bodies[at] ?? "");
    for (const { kind, id } of namesOf(standing)) add(NAMING[kind][edit.kind], [id, row]);
  }
  return ROW_FORMS.map((form) => {
    const rows = values.get(form) ?? [];
    return form.isClustered ? inOrder(rows, form.width) : rows;
  });
}

/** The rows that a thing itself is. */
function addOwn(add: Add, { kind, thing }: Standing, row: number, body: Value): void {
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
function inOrder(values: readonly Value[], width: number): readonly Value[] {
  const rows = Array.from({ length: values.length / width }, (_, row) => row * width);
  rows.sort((a, b) => compareRows(values, width, a, b));
  const sorted: Value[] = [];
  for (const [at, row] of rows.entries())
    if (at === 0 || compareRows(values, width, rows[at - 1] ?? 0, row) !== 0)
      for (let column = 0; column < width; column++) sorted.push(values[row + column] ?? null);
  return sorted;
}

/** Of two rows by where they begin. The first columns, by which no two different rows are the same, are texts or numbers throughout. */
function compareRows(values: readonly Value[], width: number, a: number, b: number): number {
  for (let column = 0; column < width; column++) {
    const [left, right] = [values[a + column] as string | number, values[b + column] as string | number];
    if (left !== right) return left < right ? -1 : 1;
  }
  return 0;
}
