import type { GivenUp } from "../../domain/weighing/mends.ts";

/** Something that can be given up, by its number; the same thing has one number at every place. */
export type Item = number;

interface Known {
  readonly key: string;
  readonly givenUp: GivenUp;
  readonly price: number;
}

/** So many things can be given up at once before their number outweighs a thousandth in `cost`. */
const COUNTED = 4096;

/** Price of a cost, without the count of things in it. */
export const priceIn = (cost: number): number => Math.floor(cost / COUNTED);
/** Least price that something of at least this cost can have. */
export const leastPriceIn = (cost: number): number => Math.max(0, Math.ceil((cost - COUNTED + 1) / COUNTED));

/** Everything that can be given up of one piece, numbered as it is met. */
export class Items {
  readonly #numbers = new Map<string, Item>();
  readonly #known: Known[] = [];

  /** The number of a thing; nothing if it has no price, because it cannot be. The first price that is told stands. */
  add(givenUp: GivenUp, price: number | undefined): Item | undefined {
    if (price === undefined) return undefined;
    const key = keyOf(givenUp);
    const before = this.#numbers.get(key);
    if (before !== undefined) return before;
    this.#numbers.set(key, this.#known.length);
    this.#known.push({ key, givenUp, price });
    return this.#known.length - 1;
  }

  key(item: Item): string {
    return this.#at(item).key;
  }

  givenUp(item: Item): GivenUp {
    return this.#at(item).givenUp;
  }

  /** Price and number in one: of two equal prices, the one of fewer things costs less. */
  cost(item: Item): number {
    return this.#at(item).price * COUNTED + 1;
  }

  costOf(items: readonly Item[]): number {
    return items.reduce((sum, item) => sum + this.cost(item), 0);
  }

  /** Sorted names of a set, as one text to order sets by. */
  textOf(items: readonly Item[]): string {
    return this.sorted(items)
      .map((item) => this.key(item))
      .join("\n");
  }

  sorted(items: readonly Item[]): readonly Item[] {
    return items.toSorted((a, b) => (this.key(a) < this.key(b) ? -1 : 1));
  }

  #at(item: Item): Known {
    const found = this.#known[item];
    if (found === undefined) throw new Error(`nothing that can be given up has the number ${item}`);
    return found;
  }
}

function keyOf(givenUp: GivenUp): string {
  switch (givenUp.kind) {
    case "later":
    case "reused":
    case "not-separate":
      return `${givenUp.kind}:${givenUp.parts.join(" ")}`;
    case "altered":
    case "misread":
      return `${givenUp.kind}:${givenUp.observation}`;
    case "claim":
      return `claim:${givenUp.claim}`;
    case "rivals":
      return `rivals:${givenUp.claims.join(" ")}`;
    case "assumption":
      return `assumption:${givenUp.assumption}`;
  }
}

/** Items of both, ascending, each once. */
export function both(a: readonly Item[], b: readonly Item[]): readonly Item[] {
  if (b.length === 0) return a;
  if (a.length === 0) return b;
  const all: Item[] = [];
  for (let i = 0, j = 0; i < a.length || j < b.length; ) {
    const [x, y] = [a[i] ?? Number.POSITIVE_INFINITY, b[j] ?? Number.POSITIVE_INFINITY];
    all.push(Math.min(x, y));
    if (x <= y) i++;
    if (y <= x) j++;
  }
  return all;
}

/** Whether all of `a`, ascending, is in `b`, ascending. */
export function isAllIn(a: readonly Item[], b: readonly Item[]): boolean {
  let j = 0;
  for (const item of a) {
    while (j < b.length && (b[j] as Item) < item) j++;
    if (b[j] !== item) return false;
    j++;
  }
  return true;
}
