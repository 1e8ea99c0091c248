import type { RevisionNumber } from "../../domain/revision.ts";
import { changeLists, type ListChange, lengthened, roomFor } from "./change-lists.ts";
import type { IdTable } from "./id-table.ts";
import { addException, BOUNDS, dropException, NO_TERM, type WalkArrays } from "./walk-arrays.ts";
import type { ClaimRows, WalkEdits } from "./walk-edits.ts";

/** Brings the arrays to the next revision. Throws, and leaves them unfit for use, where the change does not fit them. */
export function patchArrays(arrays: WalkArrays, revision: RevisionNumber, edits: WalkEdits): void {
  if (revision !== arrays.revision + 1)
    throw new Error(`Revision ${revision} does not follow ${arrays.revision}`);
  const { terms, claims } = arrays;
  const termOf = (id: string): number => numberIn(terms, id);
  const claimOf = (id: string): number => numberIn(claims, id);
  for (const { term, stands } of edits.terms) if (stands) terms.add(term);
  for (const { claim, of } of edits.added) {
    claims.add(claim);
    if (of !== undefined) claims.add(of);
  }
  makeRoom(arrays);
  for (const { term, stands, broader } of edits.terms) {
    const number = termOf(term);
    arrays.stands[number] = Number(stands);
    arrays.broader[number] = broader === undefined ? NO_TERM : termOf(broader);
  }
  const statements = changesBySubject(edits, termOf, ({ claim }) => [[claimOf(claim)]]);
  const leads = changesBySubject(edits, termOf, ({ targets, region }) =>
    targets.map((target) => [termOf(target), region === undefined ? NO_TERM : termOf(region)]),
  );
  arrays.patched +=
    changeLists(arrays, arrays.statements, statements) + changeLists(arrays, arrays.leads, leads);
  for (const { claim, of } of edits.dropped)
    if (of !== undefined) dropException(arrays.exceptions, claimOf(of), claimOf(claim));
  for (const { claim, of } of edits.added)
    if (of !== undefined) addException(arrays.exceptions, claimOf(of), claimOf(claim));
  arrays.patched += edits.terms.length;
  arrays.revision = revision;
}

function numberIn(table: IdTable, id: string): number {
  const number = table.find(id);
  if (number < 0) throw new Error(`A change names what is not in the arrays: ${id}`);
  return number;
}

/** The rows that come and go, by the number of their subject. */
function changesBySubject(
  { dropped, added }: WalkEdits,
  termOf: (id: string) => number,
  rowsOf: (rows: ClaimRows) => readonly (readonly number[])[],
): ReadonlyMap<number, ListChange> {
  const changes = new Map<number, ListChange>();
  const changeOf = (subject: number): ListChange => {
    const known = changes.get(subject) ?? { dropped: [], added: [] };
    changes.set(subject, known);
    return known;
  };
  for (const rows of dropped)
    if (rows.subject !== undefined) changeOf(termOf(rows.subject)).dropped.push(...rowsOf(rows));
  for (const rows of added)
    if (rows.subject !== undefined) changeOf(termOf(rows.subject)).added.push(...rowsOf(rows));
  return changes;
}

/** Makes the arrays by term and by claim long enough for all that have a number. */
function makeRoom(arrays: WalkArrays): void {
  const { terms, claims, exceptions } = arrays;
  if (terms.size > arrays.stands.length) {
    const length = roomFor(terms.size);
    arrays.stands = lengthened(arrays.stands, length);
    arrays.broader = lengthened(arrays.broader, length, NO_TERM);
    arrays.bounds = lengthened(arrays.bounds, length * BOUNDS);
  }
  if (claims.size > exceptions.first.length) {
    const length = roomFor(claims.size);
    exceptions.first = lengthened(exceptions.first, length, -1);
    exceptions.next = lengthened(exceptions.next, length, -1);
    exceptions.has = lengthened(exceptions.has, Math.ceil(length / 32));
  }
}
