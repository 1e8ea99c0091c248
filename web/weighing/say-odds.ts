import type { PlainStateOdds } from "#server/domain/weighing/odds.ts";

const figure = (value: number): string => String(Number(value.toPrecision(2)));

/** "twice as often as assumed", "0.3 times as often as assumed". */
export function sayWrong(factor: number): string {
  if (factor === 1) return "as often as assumed";
  return `${figure(factor)} times as often as assumed`;
}

/** "5 in 1,000". */
export const sayLeak = (leak: number): string =>
  leak < 0.001 ? `${figure(leak * 10_000)} in 10,000` : `${figure(leak * 1000)} in 1,000`;

export const sayPrior = (prior: number): string => `${figure(prior * 100)} in 100`;

/** "0.80 original, 0.17 later, 0.03 reused". */
export const sayStates = ({ original, later, reused }: PlainStateOdds): string =>
  `${original.toFixed(2)} original, ${later.toFixed(2)} later, ${reused.toFixed(2)} from an earlier piece`;
