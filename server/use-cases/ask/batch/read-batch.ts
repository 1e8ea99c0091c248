import type { Change, Edit } from "../../../domain/change.ts";
import type { Draft } from "../../../domain/draft.ts";
import { type Problem, problem } from "../../../domain/problem.ts";
import type { Alike } from "../../../domain/proposals/alike/alike.ts";
import { findAlikeClaims } from "../../../domain/proposals/alike/find-alike-claims.ts";
import { MOST_EDITS } from "../../../domain/proposals/check-words.ts";
import { claimOfFields } from "../../../domain/proposals/form/claim-of-fields.ts";
import type { FormFields } from "../../../domain/proposals/form/form-fields.ts";
import { FIELDS_OF_SOURCE } from "../../../domain/proposals/form/source-of-fields.ts";
import type { Source } from "../../../domain/source.ts";
import { type Acting, refuseCaller } from "../../acting.ts";
import { unfitOf } from "../../unfit-of.ts";
import { claimChange, type FormPorts, isChange } from "../look-over/change-of-form.ts";
import { findAlike } from "../look-over/find-alike.ts";
import { type FoundAlike, sayAlike } from "../look-over/say-alike.ts";
import type { FindNamed } from "../say-edit.ts";
import { sayChange } from "../say-proposal.ts";
import { readColumns } from "./columns-of-batch.ts";
import { openNames } from "./resolve-names.ts";

/** A table as it was read: the head, and records with their numbers. */
export interface Table {
  readonly head: readonly string[];
  readonly rows: readonly { readonly row: number; readonly cells: readonly string[] }[];
}
/** What one row would say. */
export interface BatchRow {
  readonly row: number;
  readonly says: readonly string[];
  /** Each at its row and column. */
  readonly problems: readonly Problem[];
  readonly alike: readonly FoundAlike[];
}
/** A batch as it would be proposed: all of it, or nothing. */
export interface ReadBatch {
  readonly change?: Change;
  readonly rows: readonly BatchRow[];
  /** What is wrong with the table as a whole. */
  readonly problems: readonly Problem[];
}

/** Things told of a row that may be the same: of the graph, and of rows above. */
const ALIKE_OF_ROW = 2;

/** Rows of a batch: each is a claim, and some bring a source. */
export const MOST_ROWS = 300;

/** Reads a table of claims, row by row; nothing is kept. */
export async function readBatch(
  ports: FormPorts & Acting,
  table: Table | readonly Problem[],
  find: FindNamed,
): Promise<ReadBatch> {
  const refusal = refuseCaller(ports, "make a proposal");
  if (refusal) return { rows: [], problems: refusal.refused };
  if (!("head" in table)) return { rows: [], problems: table };
  const columns = readColumns(table.head);
  const told = columns.flatMap((one) => (typeof one === "string" ? [] : [one]));
  if (told.length > 0) return { rows: [], problems: told };
  if (table.rows.length === 0)
    return {
      rows: [],
      problems: [problem("EMPTY_LIST", "There is no row below the head; add one a claim.")],
    };
  if (table.rows.length > MOST_ROWS)
    return {
      rows: [],
      problems: [
        problem(
          "TOO_LARGE",
          `The table has ${table.rows.length} rows, and at most ${MOST_ROWS} are proposed at once; divide it.`,
        ),
      ],
    };
  const read = await readRows(ports, table, columns as readonly string[]);
  const change = read.flatMap(({ edits }) => edits);
  const isWhole = read.every(({ problems }) => problems.length === 0);
  const unfit = !isWhole
    ? undefined
    : change.length > MOST_EDITS
      ? problem(
          "TOO_LARGE",
          `The table makes ${change.length} edits, and at most ${MOST_EDITS} are decided on at once; divide it.`,
        )
      : await unfitOf(ports.store, change);
  const rows = await sayRows(ports, placed(read, unfit), find);
  const isFit = isWhole && unfit === undefined;
  const asWhole = unfit !== undefined && !isPlaced(unfit) ? [unfit] : [];
  return { ...(isFit ? { change } : {}), rows, problems: asWhole };
}

interface ReadRow {
  readonly row: number;
  readonly edits: readonly Edit[];
  readonly problems: readonly Problem[];
}

async function readRows(
  ports: FormPorts,
  { rows }: Table,
  columns: readonly string[],
): Promise<readonly ReadRow[]> {
  const resolve = openNames(ports.store);
  const sources = new Map<string, Source>();
  const read: ReadRow[] = [];
  for (const { row, cells } of rows) {
    const fields: FormFields = Object.fromEntries(columns.map((name, i) => [name, cells[i] ?? ""]));
    const named = await resolve(fields);
    const asked = isProblems(named)
      ? [...named, ...otherProblems(fields, named)]
      : await claimChange(ports, named, sources);
    read.push(
      isChange(asked)
        ? { row, edits: asked, problems: [] }
        : { row, edits: [], problems: asked.map((one: Problem) => ({ ...one, path: [row, ...one.path] })) },
    );
  }
  return read;
}

const isProblems = (named: FormFields | readonly Problem[]): named is readonly Problem[] =>
  Array.isArray(named);

/** What is wrong with a row beside names that nothing has. */
function otherProblems(fields: FormFields, named: readonly Problem[]): readonly Problem[] {
  const own = Object.entries(fields).filter(
    ([name]) => !(FIELDS_OF_SOURCE as readonly string[]).includes(name),
  );
  const made = claimOfFields(Object.fromEntries(own), "claim.unnamed");
  const told = named.map(({ path }) => path[0]);
  return "id" in made ? [] : made.filter(({ path }) => !told.includes(path[0]) && path[0] !== "source");
}

const isPlaced = (unfit: Problem): boolean => typeof unfit.path[0] === "number";

/** What the graph would refuse stands with the row that brings it. */
function placed(read: readonly ReadRow[], unfit: Problem | undefined): readonly ReadRow[] {
  if (unfit === undefined || !isPlaced(unfit)) return read;
  let left = Number(unfit.path[0]);
  return read.map((one) => {
    const isHere = left >= 0 && left < one.edits.length;
    left -= one.edits.length;
    return isHere
      ? { ...one, problems: [{ ...unfit, path: [one.row, ...unfit.path.slice(2).map(String)] }] }
      : one;
  });
}

async function sayRows(
  ports: FormPorts,
  read: readonly ReadRow[],
  find: FindNamed,
): Promise<readonly BatchRow[]> {
  const change = read.flatMap(({ edits }) => edits);
  const said = new Map(
    (await sayChange(ports, change, find, change.length)).map(({ id, after }) => [id, after]),
  );
  const before: Edit[] = [];
  const found: (readonly Alike[])[] = [];
  for (const { edits } of read) {
    found.push([
      ...(await findAlike(ports.store, edits)).slice(0, ALIKE_OF_ROW),
      ...alikeInTable(edits, before).slice(0, ALIKE_OF_ROW),
    ]);
    before.push(...edits);
  }
  const standing = await sayAlike(ports, unique(found.flat().filter(({ id }) => !said.has(id))), find);
  const words = new Map(standing.map(({ id, says }) => [id, says]));
  return read.map(({ row, edits, problems }, nth) => ({
    ...{ row, problems, says: edits.map((edit) => said.get(edit.after?.id ?? "") ?? "") },
    alike: (found[nth] ?? []).map((one) => ({
      ...one,
      says: said.get(one.id) ?? words.get(one.id) ?? one.id,
    })),
  }));
}

const unique = (alike: readonly Alike[]): readonly Alike[] => [
  ...new Map(alike.map((one) => [one.id, one])).values(),
];

/** Claims of rows above that say the same, whatever their regions. */
function alikeInTable(edits: readonly Edit[], before: readonly Edit[]): readonly Alike[] {
  const claims = before.flatMap((edit) => (edit.kind === "claim" && edit.after ? [edit.after] : []));
  return edits.flatMap((edit) =>
    edit.kind === "claim" && edit.after
      ? findAlikeClaims(edit.after as unknown as Draft, claims, new Map()).filter(
          ({ by }) => by === "same claim",
        )
      : [],
  );
}
