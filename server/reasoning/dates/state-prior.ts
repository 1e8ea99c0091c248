import type { Part } from "../../domain/examination.ts";
import { ancestors, type Broader } from "../../domain/region.ts";
import type { AssumedOdds, StateOdds } from "../../domain/weighing/odds.ts";

/**
 * Prior of the states of parts that are together: that of the member most often original. Its own odds if the examiner set them, else
 * those of its kind, of the nearest broader kind, or of any part; `reworked` takes its share of all three.
 */
export function statePrior(parts: readonly Part[], odds: AssumedOdds, broader: Broader): StateOdds {
  const each = parts.map((part) => plainOdds(part, odds, broader));
  const most = each.reduce((best, one) => (one.original > best.original ? one : best));
  const plain = 1 - odds.reworked;
  return {
    original: most.original * plain,
    later: most.later * plain,
    reused: most.reused * plain,
    reworked: odds.reworked,
  };
}

function plainOdds({ id, kind }: Part, odds: AssumedOdds, broader: Broader): AssumedOdds["otherwise"] {
  const own = odds.ofParts.find(({ part }) => part === id);
  if (own) return own.odds;
  const kinds = kind === undefined ? [] : [kind, ...ancestors(kind, broader)];
  const found = kinds.flatMap((at) => odds.states.find((row) => row.kind === at) ?? []);
  return found[0]?.odds ?? odds.otherwise;
}
