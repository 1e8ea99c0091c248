import { type Likelihood, likelihoodOf } from "../../../domain/weighing/likely-state.ts";

/** A probability with two figures at most: "0.83", "0.05", "under 0.01", "over 0.99". */
export function probabilityInWords(p: number): string {
  if (p < 0.01) return "under 0.01";
  if (p > 0.99) return "over 0.99";
  return p.toFixed(2);
}

/** "0.15 to 0.49", or one number where both ends read alike. */
export function rangeInWords([least, greatest]: readonly [number, number]): string {
  const [a, b] = [probabilityInWords(least), probabilityInWords(greatest)];
  return a === b ? a : `${a} to ${b}`;
}

const LIKELY: Readonly<Record<Likelihood, string>> = {
  "very probable": "very probably",
  probable: "probably",
  "more likely than not": "more likely than not",
  possible: "possibly",
};

/** How a person says how likely something is. */
export const likelyInWords = (p: number): string => LIKELY[likelihoodOf(p)];
