import type { Edit } from "../../domain/change.ts";
import type { Database, Value } from "./database.ts";
import { STILL_STANDS } from "./migrations.ts";

/** How rows go into a table. */
export interface RowForm {
  readonly one: string;
  readonly many: string;
  /** How many values a row has. */
  readonly width: number;
  /** Whether the table is clustered by the columns that differ. */
  readonly isClustered: boolean;
}

/** Rows of one statement, where there are so many: what a call costs is shared. */
const ROWS_AT_ONCE = 64;

const LIFE = { since: "?1", until: String(STILL_STANDS) };

/**
 * The form of rows that differ in `columns`; `same` is what all rows of a statement share, as SQL, where the first parameter
 * is the revision. To hand a value over takes longer than to store it.
 */
function rowForm(
  table: string,
  columns: readonly string[],
  { same = LIFE as Readonly<Record<string, string>>, isClustered = false } = {},
): RowForm {
  const insert = (rows: number): string => {
    const values = Array.from({ length: rows }, (_, row) => {
      const own = columns.map((__, column) => `?${2 + row * columns.length + column}`);
      return `(${[...own, ...Object.values(same)].join(", ")})`;
    });
    return `INSERT INTO ${table} (${[...columns, ...Object.keys(same)].join(", ")}) VALUES ${values.join(", ")}`;
  };
  return { one: insert(1), many: insert(ROWS_AT_ONCE), width: columns.length, isClustered };
}

const isClustered = true;
export const FORMS = {
  term: rowForm("term", ["row", "id", "kind", "broader", "body"]),
  claim: rowForm("claim", ["row", "id", "relation", "subject", "body"]),
  source: rowForm("source", ["row", "id", "body"]),
  statement: rowForm("statement", ["subject", "row", "claim"], { isClustered }),
  lead: rowForm("lead", ["subject", "target", "row", "region"], { isClustered }),
  exception: rowForm("exception", ["of", "row", "claim", "accepted"], { isClustered }),
} as const;

const naming = (kind: Edit["kind"], by: Edit["kind"]): RowForm =>
  rowForm("naming", ["named", "row"], {
    same: { kind: `'${kind}'`, by: `'${by}'`, since: "?1" },
    isClustered,
  });
const namingBy = (kind: Edit["kind"]) => ({
  term: naming(kind, "term"),
  claim: naming(kind, "claim"),
  source: naming(kind, "source"),
});
/** Of a kind of thing that is named, by a thing of a kind. */
export const NAMING = { term: namingBy("term"), claim: namingBy("claim"), source: namingBy("source") };

/** All forms, in the order in which they are filled. */
export const ROW_FORMS: readonly RowForm[] = [
  ...Object.values(FORMS),
  ...Object.values(NAMING).flatMap((by) => Object.values(by)),
];

/** The values of many rows of each form, one row after the other, each row once, in the order of `ROW_FORMS`. */
export type ManyRows = readonly (readonly Value[])[];

/** Adds rows that stand from a revision on. Inside a write. */
export function insertRows(database: Database, rows: ManyRows, revision: number): void {
  for (const [at, form] of ROW_FORMS.entries()) insertOf(database, form, rows[at] ?? [], revision);
}

function insertOf(database: Database, form: RowForm, values: readonly Value[], revision: number): void {
  const step = form.width * ROWS_AT_ONCE;
  let at = 0;
  for (; at + step <= values.length; at += step)
    database.put(form.many, [revision, ...values.slice(at, at + step)]);
  for (; at < values.length; at += form.width)
    database.put(form.one, [revision, ...values.slice(at, at + form.width)]);
}
