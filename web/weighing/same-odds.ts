import type { Part } from "#server/domain/examination.ts";
import type { ChosenOdds } from "#server/domain/weighing/chosen-odds.ts";

const inOrder = ({ datePrior, parts = [], wrongClaims, leak, madeToDeceive }: ChosenOdds) =>
  JSON.stringify([
    ...[datePrior, wrongClaims, leak, madeToDeceive],
    parts
      .map(({ part, original, later, reused }) => [part, original, later, reused])
      .sort(([a], [b]) => (String(a) < String(b) ? -1 : 1)),
  ]);

/** Whether two choices assume the same. */
export const sameOdds = (a: ChosenOdds = {}, b: ChosenOdds = {}): boolean => inOrder(a) === inOrder(b);

/** What is chosen, without parts that the piece no longer has. */
export function oddsOfParts(odds: ChosenOdds, parts: readonly Part[]): ChosenOdds {
  const there = new Set(parts.map(({ id }) => id));
  const { parts: chosen, ...rest } = odds;
  const left = chosen?.filter(({ part }) => there.has(part)) ?? [];
  return left.length > 0 ? { ...rest, parts: left } : rest;
}
