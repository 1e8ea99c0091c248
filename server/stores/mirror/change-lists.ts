import type { Lists } from "./walk-arrays.ts";

/** A row that is taken out of a list or put into it: a number a column. */
export type Row = readonly number[];
/** By the number of what a list is about. */
export interface ListChange {
  readonly dropped: Row[];
  readonly added: Row[];
}

/**
 * Changes lists in place; one that becomes longer moves behind all others. Gives how many places that left behind or took.
 * Throws where a dropped row is not there.
 */
export function changeLists(lists: Lists, changes: ReadonlyMap<number, ListChange>): number {
  let patched = 0;
  for (const [key, { dropped, added }] of changes) {
    for (const row of dropped) drop(lists, key, row);
    patched += dropped.length;
    if (added.length === 0) continue;
    const size = (lists.to[key] as number) - (lists.from[key] as number);
    patched += size + added.length;
    if (lists.to[key] !== lists.used) move(lists, key, size + added.length);
    reserve(lists, lists.used + added.length);
    for (const row of added) {
      for (const [c, column] of lists.columns.entries()) column[lists.used] = row[c] as number;
      lists.used++;
    }
    lists.to[key] = lists.used;
  }
  return patched;
}

function drop(lists: Lists, key: number, row: Row): void {
  const end = (lists.to[key] as number) - 1;
  for (let place = lists.from[key] as number; place <= end; place++) {
    if (!lists.columns.every((column, c) => column[place] === row[c])) continue;
    for (const column of lists.columns) column[place] = column[end] as number;
    lists.to[key] = end;
    return;
  }
  throw new Error("A row that is withdrawn is not in the arrays");
}

/** Moves a list to the end, where `size` rows find room. */
function move(lists: Lists, key: number, size: number): void {
  reserve(lists, lists.used + size);
  const [from, to] = [lists.from[key] as number, lists.to[key] as number];
  for (const column of lists.columns) column.copyWithin(lists.used, from, to);
  lists.from[key] = lists.used;
  lists.used += to - from;
  lists.to[key] = lists.used;
}

function reserve(lists: Lists, size: number): void {
  if (size <= (lists.columns[0] as Int32Array).length) return;
  lists.columns = lists.columns.map((column) => lengthened(column, Math.max(size, roomFor(column.length))));
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
