import type { RandomSource } from "./random-source.ts";
import { draw, type Weights } from "./weighted.ts";

/**
 * Forms of dates by relation, as often as they stand in the seed. `A` and `B` are years, the first not after the second;
 * `A-M-D` is a day, `AX` a decade, `CXX` a century.
 */
export const WHEN_SHAPES = {
  introduced: {
    ...{ A: 122, "A-M-D": 52, "A/B": 26, "A~": 16, "A-M": 11, "A~/B~": 3, "A/B~": 2, AX: 1, "[A,B]": 1 },
  },
  attested: {
    ...{ A: 159, "A~/B~": 75, "A~": 53, "A/B": 34, AX: 19, "A-M-D": 16, CXX: 8, "../A~": 6, "A-M": 5 },
    ...{ "../A": 4, "A~/B": 4 },
  },
  "common from": { "A~/B~": 113, "A~": 49, AX: 4, "A/B~": 4, "A/B": 3, "A~/B": 3, A: 2 },
  "common until": { "A~": 24, "A~/B~": 20, A: 5, "A/B": 1 },
  discontinued: { A: 5, "A~/B": 2 },
  current: { "A~/B~": 164, "A/B": 12, "AX/BX": 3, "A~/..": 1, "../B~": 1, "A/": 1 },
  active: { "A/B": 19, "A~/B": 13, "A~/B~": 12, "A/B~": 2, "../B": 4, "A~/B?": 1 },
  "not found in": { "A~/B~": 9, "A/B": 7, "../B~": 1 },
} as const satisfies Readonly<Record<string, Weights<string>>>;
export type DatedRelation = keyof typeof WHEN_SHAPES;

/** A date in one of the forms of a relation, with these years in it (`first <= last`, of four figures). */
export function writeWhen(
  random: RandomSource,
  relation: DatedRelation,
  first: number,
  last: number,
): string {
  const shape = draw(random, WHEN_SHAPES[relation] as Weights<string>);
  if (shape === "CXX") return `${Math.floor(first / 100)}XX`;
  if (shape === "[A,B]") return first === last ? String(first) : `[${first},${last}]`;
  const two = (number: number): string => String(number).padStart(2, "0");
  return shape
    .replace("AX", `${Math.floor(first / 10)}X`)
    .replace("BX", `${Math.floor(last / 10)}X`)
    .replace("A", String(first))
    .replace("B", String(last))
    .replace("M", two(1 + random.below(12)))
    .replace("D", two(1 + random.below(28)));
}
