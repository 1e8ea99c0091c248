import { LINE_FEED } from "./sort-ids.ts";

/**
 * Ids with a number each. Those that were there when it was made are numbered in their order, so that sorting numbers
 * sorts ids; those that were added since follow in the order they came.
 */
export interface IdTable {
  /** How many there are. */
  readonly size: number;
  /** How many of them are numbered in the order of ids. */
  readonly sorted: number;
  /** The number of an id, or -1. */
  find(id: string): number;
  /** The same for the id that begins at a place in a column, fastest where it is the one of the number `guess`. */
  findAt(bytes: Uint8Array, place: number, guess: number): number;
  idOf(number: number): string;
  /** The number of an id, a new one if it has none. */
  add(id: string): number;
  /** Bytes in the arrays; ids added later are not among them. */
  readonly byteLength: number;
}

const NONE = 0xffffffff;

/** A table of the ids that begin at these places, sorted and each once. */
export function idTable(bytes: Uint8Array, places: Uint32Array): IdTable {
  const column = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const added: string[] = [];
  const numbers = new Map<string, number>();
  let made: Uint32Array | undefined;
  /** Made when an id is first looked for: it takes as long as the rest of a table. */
  const hashed = (): Uint32Array => {
    made ??= hashIndex(bytes, places);
    return made;
  };

  const findSorted = (id: string): number => {
    const index = hashed();
    const mask = index.length - 1;
    for (let slot = hashText(id) & mask; ; slot = (slot + 1) & mask) {
      const number = index[slot] as number;
      if (number === NONE) return -1;
      if (isAt(bytes, places[number] as number, id)) return number;
    }
  };
  const idOf = (number: number): string => {
    if (number >= places.length) return added[number - places.length] as string;
    const from = places[number] as number;
    return column.toString("latin1", from, column.indexOf(LINE_FEED, from));
  };
  const find = (id: string): number => {
    const number = findSorted(id);
    return number < 0 && added.length > 0 ? (numbers.get(id) ?? -1) : number;
  };
  return {
    get size() {
      return places.length + added.length;
    },
    sorted: places.length,
    find,
    findAt: (other, place, guess) => {
      if (guess < places.length && isSame(bytes, places[guess] as number, other, place)) return guess;
      const index = hashed();
      const mask = index.length - 1;
      for (let slot = hashAt(other, place) & mask; ; slot = (slot + 1) & mask) {
        const number = index[slot] as number;
        if (number === NONE) return -1;
        if (isSame(bytes, places[number] as number, other, place)) return number;
      }
    },
    idOf,
    add: (id) => {
      const known = find(id);
      if (known >= 0) return known;
      added.push(id);
      numbers.set(id, places.length + added.length - 1);
      return places.length + added.length - 1;
    },
    get byteLength() {
      return bytes.byteLength + places.byteLength + (made?.byteLength ?? 0);
    },
  };
}

/** Numbers by the hash of their id: at least twice as many slots as ids. */
function hashIndex(bytes: Uint8Array, places: Uint32Array): Uint32Array {
  const index = new Uint32Array(2 ** Math.ceil(Math.log2(Math.max(8, places.length * 2)))).fill(NONE);
  const mask = index.length - 1;
  for (let number = 0; number < places.length; number++) {
    let slot = hashAt(bytes, places[number] as number) & mask;
    while (index[slot] !== NONE) slot = (slot + 1) & mask;
    index[slot] = number;
  }
  return index;
}

// FNV-1a, with its high bits folded down.
const START = 0x811c9dc5;
const mix = (hash: number, sign: number): number => Math.imul(hash ^ sign, 0x01000193);
const fold = (hash: number): number => hash ^ (hash >>> 15);

function hashAt(bytes: Uint8Array, place: number): number {
  let hash = START;
  for (let i = place; bytes[i] !== LINE_FEED; i++) hash = mix(hash, bytes[i] as number);
  return fold(hash);
}

function hashText(id: string): number {
  let hash = START;
  for (let i = 0; i < id.length; i++) hash = mix(hash, id.charCodeAt(i));
  return fold(hash);
}

function isAt(bytes: Uint8Array, place: number, id: string): boolean {
  for (let i = 0; i < id.length; i++) {
    const sign = bytes[place + i];
    if (sign !== id.charCodeAt(i) || sign === LINE_FEED) return false;
  }
  return bytes[place + id.length] === LINE_FEED;
}

function isSame(bytes: Uint8Array, place: number, other: Uint8Array, otherPlace: number): boolean {
  for (let i = 0; ; i++) {
    const sign = bytes[place + i];
    if (sign !== other[otherPlace + i]) return false;
    if (sign === LINE_FEED) return true;
  }
}
