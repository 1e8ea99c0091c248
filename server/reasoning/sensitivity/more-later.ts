import type { AssumedOdds, PlainStateOdds } from "../../domain/weighing/odds.ts";

/** The odds with `later` times a factor in every row, taken from `original` or given back to it, which stops at 0. */
export function moreLater(odds: AssumedOdds, factor: number): AssumedOdds {
  return {
    ...odds,
    states: odds.states.map((row) => ({ ...row, odds: changed(row.odds, factor) })),
    otherwise: changed(odds.otherwise, factor),
    ofParts: odds.ofParts.map((row) => ({ ...row, odds: changed(row.odds, factor) })),
  };
}

function changed({ original, later, reused }: PlainStateOdds, factor: number): PlainStateOdds {
  const more = Math.min(later * factor, original + later);
  return { original: original + later - more, later: more, reused };
}
