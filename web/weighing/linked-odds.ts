import type { PlainStateOdds } from "#server/domain/weighing/odds.ts";

export type PlainState = keyof PlainStateOdds;
export const PLAIN_STATES: readonly PlainState[] = ["original", "later", "reused"];

/** No state is ever taken as certain or as impossible. */
export const LEAST = 0.01;
export const MOST = 1 - 2 * LEAST;

const rounded = (value: number): number => Math.round(value * 1000) / 1000;

/**
 * Sets one of three odds that add up to 1; the other two share what is left in the proportion they had, neither falling under the
 * least. To thousandths.
 */
export function moveOdds(odds: PlainStateOdds, moved: PlainState, to: number): PlainStateOdds {
  const value = rounded(Math.min(MOST, Math.max(LEAST, to)));
  const [a, b] = PLAIN_STATES.filter((state) => state !== moved) as [PlainState, PlainState];
  const left = 1 - value;
  const before = odds[a] + odds[b];
  const share = before > 0 ? odds[a] / before : 0.5;
  const first = rounded(Math.min(left - LEAST, Math.max(LEAST, left * share)));
  const all = { [moved]: value, [a]: first, [b]: rounded(left - first) };
  return all as unknown as PlainStateOdds;
}
