import { compareIds } from "../../domain/compare.ts";
import { LARGEST_PAGE, type Page, type PageAsk } from "../../ports/store.ts";

/**
 * Cuts a page out of sorted rows. `isAfter` tells whether a row comes after a cursor.
 * Throws a RangeError if `first` is out of range.
 */
export function pageOf<Row>(
  rows: readonly Row[],
  { first, after }: PageAsk,
  cursorOf: (row: Row) => string,
  isAfter: (row: Row, cursor: string) => boolean = (row, cursor) => cursorOf(row) > cursor,
): Page<Row> {
  if (!(Number.isInteger(first) && first >= 1 && first <= LARGEST_PAGE))
    throw new RangeError(`A page holds 1 to ${LARGEST_PAGE} rows, not ${first}`);
  const left = after === undefined ? rows : rows.filter((row) => isAfter(row, after));
  const page = left.slice(0, first);
  return { rows: page, cursors: page.map(cursorOf), hasMore: left.length > first, total: rows.length };
}

/** The things of a map, by id. */
export const sorted = <Thing extends { readonly id: string }>(
  things: ReadonlyMap<string, Thing>,
): readonly Thing[] => [...things.values()].sort(compareIds);

/** Those of these ids that are there, by id. */
export function pick<ThingId extends string, Thing>(
  things: ReadonlyMap<string, Thing>,
  ids: readonly ThingId[],
): ReadonlyMap<ThingId, Thing> {
  const found = new Map<ThingId, Thing>();
  for (const id of [...ids].sort()) {
    const thing = things.get(id);
    if (thing !== undefined) found.set(id, thing);
  }
  return found;
}
