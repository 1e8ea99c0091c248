import type { RandomSource } from "./random-source.ts";

/** What is drawn, with whole numbers that say how often: counts, as a rule. */
export type Weights<Item extends string> = Readonly<Partial<Record<Item, number>>>;

/** Draws one of the items, each as often as its weight says. */
export function draw<Item extends string>(random: RandomSource, weights: Weights<Item>): Item {
  const { total, entries } = laidOut(weights);
  let left = random.below(total);
  for (const [item, weight] of entries) {
    if (left < weight) return item as Item;
    left -= weight;
  }
  throw new RangeError("There is nothing to draw from");
}

interface LaidOut {
  readonly total: number;
  readonly entries: readonly (readonly [item: string, weight: number])[];
}
const known = new WeakMap<object, LaidOut>();

function laidOut(weights: Weights<string>): LaidOut {
  const before = known.get(weights);
  if (before !== undefined) return before;
  const entries = Object.entries(weights) as [string, number][];
  const laid = { total: entries.reduce((sum, [, weight]) => sum + weight, 0), entries };
  known.set(weights, laid);
  return laid;
}

/** Values that 0, 10, 25, 50, 75, 90, 95, 99 and 100 of 100 do not exceed. */
export type Quantiles = readonly number[] & { readonly length: 9 };
const SHARES = [0, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95, 0.99, 1] as const;

/** A whole number so distributed; between two values they run straight. */
export function drawBetween(random: RandomSource, quantiles: Quantiles): number {
  const share = random.below(10_000) / 10_000;
  const next = SHARES.findIndex((each) => share < each);
  const [from, to] = [SHARES[next - 1] as number, SHARES[next] as number];
  const [low, high] = [quantiles[next - 1] as number, quantiles[next] as number];
  return Math.round(low + ((share - from) / (to - from)) * (high - low));
}
