/** Ends an id in a column of bytes; less than every sign of an id. */
export const LINE_FEED = 10;

const SMALL = 24;
const SIGNS = 256;

/**
 * Sorts ids by their bytes: `places` says where in `bytes` each begins. `order`, what belongs to each, is moved with them.
 * By the most significant byte first, as a million texts take too long to be compared.
 */
export function sortIds(bytes: Uint8Array, places: Uint32Array, order: Uint32Array): void {
  const sparePlaces = new Uint32Array(places.length);
  const spareOrder = new Uint32Array(places.length);
  const next = new Uint32Array(SIGNS);
  const todo: number[] = [0, places.length, 0];
  while (todo.length > 0) {
    const depth = todo.pop() as number;
    const to = todo.pop() as number;
    const from = todo.pop() as number;
    if (to - from < SMALL) {
      insert(bytes, places, order, { from, to, depth });
      continue;
    }
    next.fill(0);
    for (let i = from; i < to; i++) count(next, signAt(bytes, places, i, depth));
    const first = signAt(bytes, places, from, depth);
    if (next[first] === to - from) {
      if (first !== LINE_FEED) todo.push(from, to, commonDepth(bytes, places, { from, to, depth }));
      continue;
    }
    let begin = from;
    for (let sign = 0; sign < SIGNS; sign++) {
      const many = next[sign] as number;
      next[sign] = begin;
      if (many > 1 && sign !== LINE_FEED) todo.push(begin, begin + many, depth + 1);
      begin += many;
    }
    for (let i = from; i < to; i++) {
      const sign = signAt(bytes, places, i, depth);
      const at = next[sign] as number;
      sparePlaces[at] = places[i] as number;
      spareOrder[at] = order[i] as number;
      next[sign] = at + 1;
    }
    places.set(sparePlaces.subarray(from, to), from);
    order.set(spareOrder.subarray(from, to), from);
  }
}

const signAt = (bytes: Uint8Array, places: Uint32Array, i: number, depth: number): number =>
  bytes[(places[i] as number) + depth] as number;

function count(counts: Uint32Array, sign: number): void {
  counts[sign] = (counts[sign] as number) + 1;
}

interface Bucket {
  readonly from: number;
  readonly to: number;
  /** Bytes that are the same in all. */
  readonly depth: number;
}

/** How many bytes are the same in all of a bucket. Ids mostly begin alike, and each byte would take a turn. */
function commonDepth(bytes: Uint8Array, places: Uint32Array, { from, to, depth }: Bucket): number {
  const first = places[from] as number;
  let common = 120;
  for (let i = from + 1; i < to && common > depth + 1; i++) {
    const place = places[i] as number;
    let same = depth + 1;
    while (same < common && bytes[place + same] === bytes[first + same] && bytes[first + same] !== LINE_FEED)
      same++;
    common = same;
  }
  return common;
}

/** Sorts a few, whose first `depth` bytes are the same, by insertion. */
function insert(
  bytes: Uint8Array,
  places: Uint32Array,
  order: Uint32Array,
  { from, to, depth }: Bucket,
): void {
  for (let i = from + 1; i < to; i++) {
    const place = places[i] as number;
    const what = order[i] as number;
    let at = i;
    while (at > from && compareIdsAt(bytes, places[at - 1] as number, place, depth) > 0) {
      places[at] = places[at - 1] as number;
      order[at] = order[at - 1] as number;
      at--;
    }
    places[at] = place;
    order[at] = what;
  }
}

/** Order of two ids by their bytes, from a byte on up to which they are the same. */
export function compareIdsAt(bytes: Uint8Array, a: number, b: number, depth = 0): number {
  for (let i = depth; ; i++) {
    const sign = bytes[a + i] as number;
    const difference = sign - (bytes[b + i] as number);
    if (difference !== 0 || sign === LINE_FEED) return difference;
  }
}
