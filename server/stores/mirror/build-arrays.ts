import type { RevisionNumber } from "../../domain/revision.ts";
import { nextTurn } from "../../ports/next-turn.ts";
import type { IdColumn, WalkBlock } from "../../ports/walk-block.ts";
import { type GrowingColumn, growingColumn } from "./growing-column.ts";
import { type IdTable, idTable } from "./id-table.ts";
import { compareIdsAt, LINE_FEED, sortIds } from "./sort-ids.ts";
import {
  addException,
  BOUNDS,
  type Exceptions,
  type Lists,
  NO_TERM,
  type WalkArrays,
} from "./walk-arrays.ts";

/** How far a building has come. */
export interface Progress {
  readonly terms: number;
  readonly claims: number;
}

export interface BuildOptions {
  /** Told after each block; what it throws ends the building. */
  readonly onProgress?: (progress: Progress) => void;
}

/** Builds the arrays of one revision from its blocks; others have their turn after each block. */
export async function buildArrays(
  blocks: AsyncIterable<WalkBlock>,
  revision: RevisionNumber,
  { onProgress }: BuildOptions = {},
): Promise<WalkArrays> {
  const named = { ids: [] as IdColumn[], broader: [] as IdColumn[] };
  let terms: IdTable | undefined;
  const statements = { subject: growingColumn() };
  const leads = { subject: growingColumn(), target: growingColumn(), region: growingColumn() };
  const claimIds: IdColumn[] = [];
  const exceptionIds: IdColumn[] = [];
  const exceptedIds: IdColumn[] = [];

  for await (const block of blocks) {
    if (block.rows === "terms") {
      if (terms !== undefined) throw new Error("A block of terms came after other blocks");
      named.ids.push(block.id);
      named.broader.push(block.broader);
    } else {
      terms ??= sortedTable(joined(named.ids)).table;
      if (block.rows === "statements") {
        addNumbers(terms, block.subject, statements.subject);
        claimIds.push(block.claim);
      } else if (block.rows === "leads") {
        addNumbers(terms, block.subject, leads.subject);
        addNumbers(terms, block.target, leads.target);
        addNumbers(terms, block.region, leads.region);
      } else {
        exceptionIds.push(block.claim);
        exceptedIds.push(block.of);
      }
    }
    onProgress?.({ terms: terms?.size ?? 0, claims: statements.subject.length });
    await nextTurn();
  }
  terms ??= sortedTable(joined(named.ids)).table;
  const broader = broaderOf(terms, named.ids, named.broader);
  const bounds = new Int32Array(terms.size * BOUNDS);
  const leadLists = listsBy(bounds, 0, leads.subject.numbers(), [
    leads.target.numbers(),
    leads.region.numbers(),
  ]);
  await nextTurn();

  const many = statements.subject.length;
  const ids = joined([...claimIds, ...exceptionIds, ...exceptedIds]);
  const distinct = ids.length - lengthOf(exceptedIds);
  const { table: claims, numbers } = sortedTable(ids, distinct);
  await nextTurn();
  return {
    revision,
    terms,
    claims,
    stands: new Uint8Array(terms.size).fill(1),
    broader,
    bounds,
    leads: leadLists,
    statements: listsBy(bounds, 2, statements.subject.numbers(), [numbers.subarray(0, many)]),
    exceptions: exceptionsOf(claims.size, numbers.subarray(many)),
    patched: 0,
  };
}

/** A table of the ids of a column, and the number of each of its rows. Only from byte `distinct` on may one stand again. */
function sortedTable(
  column: IdColumn,
  distinct = column.length,
): { readonly table: IdTable; readonly numbers: Int32Array } {
  const sorted = placesIn(column);
  const order = new Uint32Array(sorted.length);
  for (let i = 0; i < order.length; i++) order[i] = i;
  if (!isSorted(column, sorted)) sortIds(column, sorted, order);
  const numbers = new Int32Array(sorted.length);
  let size = 0;
  let last = distinct;
  for (let i = 0; i < sorted.length; i++) {
    const place = sorted[i] as number;
    const isNew =
      size === 0 || (place < distinct && last < distinct) || compareIdsAt(column, last, place) !== 0;
    if (isNew) {
      sorted[size] = place;
      size++;
    }
    last = place;
    numbers[order[i] as number] = size - 1;
  }
  return { table: idTable(column, size === sorted.length ? sorted : sorted.slice(0, size)), numbers };
}

/** Where each id of a column begins. */
function placesIn(column: IdColumn): Uint32Array {
  let many = 0;
  for (let i = 0; i < column.length; i++) if (column[i] === LINE_FEED) many++;
  const begins = new Uint32Array(many);
  let begin = 0;
  for (let i = 0, row = 0; i < column.length; i++)
    if (column[i] === LINE_FEED) {
      begins[row++] = begin;
      begin = i + 1;
    }
  return begins;
}

function isSorted(column: IdColumn, begins: Uint32Array): boolean {
  for (let i = 1; i < begins.length; i++)
    if (compareIdsAt(column, begins[i - 1] as number, begins[i] as number) > 0) return false;
  return true;
}

/** Adds the number of each term of a column, `NO_TERM` where there is none. */
function addNumbers(terms: IdTable, column: IdColumn, to: GrowingColumn): void {
  let last = 0;
  let length = 0;
  let number = NO_TERM;
  for (let place = 0; place < column.length; place += length) {
    // Rows about one term mostly follow each other, and then those about the next.
    if (length === 0 || compareIdsAt(column, last, place) !== 0) {
      number = column[place] === LINE_FEED ? NO_TERM : terms.findAt(column, place, number + 1);
      if (number < 0 && column[place] !== LINE_FEED)
        throw new Error("A row names a term that does not stand");
      last = place;
      length = column.indexOf(LINE_FEED, place) + 1 - place;
    }
    to.push(number);
  }
}

/** By term, its broader one, from two columns whose rows belong together. */
function broaderOf(terms: IdTable, ids: readonly IdColumn[], broader: readonly IdColumn[]): Int32Array {
  const term = growingColumn();
  const above = growingColumn();
  for (const column of ids) addNumbers(terms, column, term);
  for (const column of broader) addNumbers(terms, column, above);
  const found = new Int32Array(terms.size).fill(NO_TERM);
  const [of, is] = [term.numbers(), above.numbers()];
  for (let row = 0; row < of.length; row++) found[of[row] as number] = is[row] as number;
  return found;
}

const lengthOf = (columns: readonly IdColumn[]): number =>
  columns.reduce((sum, { length }) => sum + length, 0);

/** One column of all. */
function joined(columns: readonly IdColumn[]): IdColumn {
  const all = new Uint8Array(lengthOf(columns));
  let at = 0;
  for (const column of columns) {
    all.set(column, at);
    at += column.length;
  }
  return all;
}

/** The rows of some columns as lists by term, with their bounds. */
function listsBy(
  bounds: Int32Array,
  bound: Lists["bound"],
  terms: Int32Array,
  columns: readonly [Int32Array] | readonly [Int32Array, Int32Array],
): Lists {
  const width = columns.length;
  const rows = new Int32Array(terms.length * width);
  for (const term of terms) {
    const at = term * BOUNDS + bound + 1;
    bounds[at] = (bounds[at] as number) + 1;
  }
  for (let at = bound, sum = 0; at < bounds.length; at += BOUNDS) {
    const many = bounds[at + 1] as number;
    bounds[at] = sum;
    bounds[at + 1] = sum;
    sum += many;
  }
  for (let row = 0; row < terms.length; row++) {
    const end = (terms[row] as number) * BOUNDS + bound + 1;
    const place = bounds[end] as number;
    for (let c = 0; c < width; c++) rows[place * width + c] = (columns[c] as Int32Array)[row] as number;
    bounds[end] = place + 1;
  }
  return { bound, width, rows, used: terms.length };
}

/** From the numbers of exceptions, followed by those of what they are about. */
function exceptionsOf(size: number, numbers: Int32Array): Exceptions {
  const exceptions: Exceptions = {
    has: new Uint32Array(Math.ceil(size / 32)),
    first: new Int32Array(size).fill(-1),
    next: new Int32Array(size).fill(-1),
  };
  const many = numbers.length / 2;
  for (let row = 0; row < many; row++)
    addException(exceptions, numbers[many + row] as number, numbers[row] as number);
  return exceptions;
}
