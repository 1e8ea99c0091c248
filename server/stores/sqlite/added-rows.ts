import type { ChangeTexts } from "../../chain/change-text.ts";
import type { Change, Edit } from "../../domain/change.ts";
import type { Claim } from "../../domain/claim.ts";
import type { Standing } from "../../domain/graph-view.ts";
import { namesOf } from "../../domain/names-of.ts";
import type { Value } from "./database.ts";
import { FORMS, type ManyRows, NAMING, ROW_FORMS, type RowForm } from "./insert-rows.ts";

/** The numbers that the next rows of each kind get. */
export type NextRows = Record<Edit["kind"], number>;

type Add = (form: RowForm, row: readonly Value[]) => void;

/** All rows that a change adds, some of them twice, where a thing names another in several places; counts `next` on. */
export function addedRows(change: Change, texts: ChangeTexts, next: NextRows): ManyRows {
  const values = new Map<RowForm, Value[]>(ROW_FORMS.map((form) => [form, []]));
  const add: Add = (form, row) => void values.get(form)?.push(...row);
  for (const [at, edit] of change.entries()) {
    if (!edit.after) continue;
    const row = next[edit.kind]++;
    const standing = { kind: edit.kind, thing: edit.after } as Standing;
    addOwn(add, standing, row, texts.after[at] ?? "");
    for (const { kind, id } of namesOf(standing)) add(NAMING[kind][edit.kind], [id, row]);
  }
  return ROW_FORMS.map((form) => values.get(form) ?? []);
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
