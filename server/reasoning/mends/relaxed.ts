import type { Choice } from "./components.ts";
import type { Item, Items } from "./items.ts";
import type { Need, Stance, Treatment } from "./stances.ts";

/** What each sighting pays of the price of a thing that it could be saved by; the shares of a thing add up to its price at most. */
export type Shares = ReadonlyMap<string, ReadonlyMap<Item, number>>;

/**
 * A bound from below: each sighting pays its share of what several could be saved by. What has been given up already (`has`) is free. With
 * the shares adding up to the prices no set costs less (weak duality; Fisher 1981).
 */
export interface Relaxed {
  readonly clause: (need: Need, clause: readonly Item[], has: readonly Item[]) => number;
  readonly treatment: (need: Need, treatment: Treatment, has: readonly Item[]) => number;
  readonly need: (need: Need, has: readonly Item[]) => number;
  readonly stance: (stance: Stance, has: readonly Item[]) => number;
  readonly choice: (choice: Choice, has: readonly Item[]) => number;
  /** What the sightings of a choice pay of each thing. */
  readonly sharesOf: (choice: Choice) => ReadonlyMap<Item, number>;
}

const NOTHING: ReadonlyMap<Item, number> = new Map();

/** Reads bounds from shares. */
export function relax(shares: Shares, items: Items): Relaxed {
  const clause: Relaxed["clause"] = ({ sighting }, drops, has) => {
    const own = shares.get(sighting) ?? NOTHING;
    let least = Number.POSITIVE_INFINITY;
    for (const item of drops) {
      if (has.length > 0 && has.includes(item)) return 0;
      const share = own.get(item) ?? 0;
      if (share < least) least = share;
    }
    return least;
  };
  const treatment: Relaxed["treatment"] = (of, { item, clauses }, has) => {
    let most = 0;
    for (const drops of clauses) most = Math.max(most, clause(of, drops, has));
    return item === undefined ? most : most + items.cost(item);
  };
  const need: Relaxed["need"] = (of, has) => {
    let least = Number.POSITIVE_INFINITY;
    for (const one of of.treatments) least = Math.min(least, treatment(of, one, has));
    return least;
  };
  const stance: Relaxed["stance"] = ({ item, needs }, has) => {
    let sum = item === undefined ? 0 : items.cost(item);
    for (const one of needs) sum += need(one, has);
    return sum;
  };
  const choice: Relaxed["choice"] = ({ stances }, has) => {
    let least = Number.POSITIVE_INFINITY;
    for (const one of stances) least = Math.min(least, stance(one, has));
    return least;
  };
  const sharesOf: Relaxed["sharesOf"] = ({ stances }) => {
    const sums = new Map<Item, number>();
    for (const sighting of new Set(stances.flatMap(({ needs }) => needs.map((of) => of.sighting))))
      for (const [item, share] of shares.get(sighting) ?? NOTHING)
        sums.set(item, (sums.get(item) ?? 0) + share);
    return sums;
  };
  return { clause, treatment, need, stance, choice, sharesOf };
}
