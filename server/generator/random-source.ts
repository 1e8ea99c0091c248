/** Numbers that look random and are the same for the same seed. */
export interface RandomSource {
  /** A whole number from 0 to `limit - 1`. */
  below(limit: number): number;
  /** As `below`, low numbers much more often. */
  skewed(limit: number): number;
  /** True with this probability. */
  chance(probability: number): boolean;
  /** One of these. */
  pick<Item>(items: readonly Item[]): Item;
}

/** The generator "mulberry32": 32 bits of state, one multiplication a step. */
export function randomSource(seed: number): RandomSource {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (limit: number): number => Math.floor(next() * limit);
  return {
    below,
    skewed: (limit) => Math.floor(next() ** 2 * limit),
    chance: (probability) => next() < probability,
    pick: (items) => {
      if (items.length === 0) throw new RangeError("There is nothing to pick from");
      return items[below(items.length)] as (typeof items)[number];
    },
  };
}

/**
 * A source of its own for each list of numbers: what is made of one never depends on what was made before it. The
 * numbers are mixed by the finishing steps of the hash "murmur3".
 */
export function randomSourceOf(...numbers: readonly number[]): RandomSource {
  let mixed = 0x9747b28c;
  for (const number of numbers) {
    mixed = Math.imul(mixed ^ number, 0xcc9e2d51);
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    mixed ^= mixed >>> 16;
  }
  return randomSource(mixed);
}
