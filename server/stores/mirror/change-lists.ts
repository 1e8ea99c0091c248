import { BOUNDS, boundsOf, type Lists, type WalkArrays } from "./walk-arrays.ts";

/** A row that is taken out of a list or put into it. */
export type Row = readonly number[];
/** By the number of the term that a list is about. */
export interface ListChange {
  readonly dropped: Row[];
  readonly added: Row[];
}

/**
 * Changes lists in place; one that becomes longer moves behind all others. Gives how many rows that left behind or took.
 * Throws where a dropped row is not there.
 */
export function changeLists(
  arrays: WalkArrays,
  lists: Lists,
  changes: ReadonlyMap<number, ListChange>,
): number {
  let patched = 0;
  for (const [term, { dropped, added }] of changes) {
    for (const row of dropped) drop(arrays, lists, term, row);
    patched += dropped.length;
    if (added.length === 0) continue;
    const [from, to] = boundsOf(arrays, lists, term);
    const size = to - from;
    patched += size + added.length;
    reserve(lists, lists.used + size + added.length);
    const begin = to === lists.used ? from : lists.used;
    lists.rows.copyWithin(begin * lists.width, from * lists.width, to * lists.width);
    let end = begin + size;
    for (const row of added) lists.rows.set(row, end++ * lists.width);
    lists.used = end;
    arrays.bounds.set([begin, end], term * BOUNDS + lists.bound);
  }
  return patched;
}

/** Puts the last row of the list in the place of one. */
function drop(arrays: WalkArrays, lists: Lists, term: number, row: Row): void {
  const { rows, width } = lists;
  const [from, to] = boundsOf(arrays, lists, term);
  for (let place = from; place < to; place++) {
    if (!row.every((number, c) => rows[place * width + c] === number)) continue;
    rows.copyWithin(place * width, (to - 1) * width, to * width);
    arrays.bounds[term * BOUNDS + lists.bound + 1] = to - 1;
    return;
  }
  throw new Error("A row that is withdrawn is not in the arrays");
}

function reserve(lists: Lists, size: number): void {
  if (size * lists.width > lists.rows.length)
    lists.rows = lengthened(lists.rows, Math.max(size * lists.width, roomFor(lists.rows.length)));
}

/** Some more than there is, so that not every change copies all. */
export const roomFor = (length: number): number => Math.ceil(length * 1.1) + 64;

/** A longer copy; what is new holds `fill`. */
export function lengthened<Numbers extends Int32Array | Uint32Array | Uint8Array>(
  numbers: Numbers,
  length: number,
  fill = 0,
): Numbers {
  const longer = new (numbers.constructor as new (length: number) => Numbers)(length);
  longer.set(numbers);
  if (fill !== 0) longer.fill(fill, numbers.length);
  return longer;
}
