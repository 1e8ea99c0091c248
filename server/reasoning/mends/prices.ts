import type { ClaimId, ObservationId, PartId } from "../../domain/ids.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { Subject } from "../check.ts";
import { claimIsRight } from "../dates/right-odds.ts";
import { statePrior } from "../dates/state-prior.ts";

/** What it costs to give something up, in thousandths of a decade of odds; nothing for what cannot be. */
export interface Prices {
  /** Of parts that are together. */
  readonly later: (parts: readonly PartId[]) => number | undefined;
  readonly reused: (parts: readonly PartId[]) => number | undefined;
  readonly altered: (observation: ObservationId) => number | undefined;
  readonly misread: (observation: ObservationId) => number | undefined;
  readonly claim: (claim: ClaimId) => number | undefined;
  readonly assumption: number | undefined;
  readonly separate: number | undefined;
}

/** Thousandths of a decade that what is so should be so, against what it would have to be: halves up, never below 0 (M2). */
export function priceOf(ok: number, not: number): number | undefined {
  if (not <= 0) return undefined;
  return ok <= 0 ? 0 : Math.max(0, Math.round(1000 * Math.log10(ok / not)));
}

const priceOfWrong = (wrong: number): number | undefined => priceOf(1 - wrong, wrong);

/** Prices from the same odds as the probabilities of a piece (M2). */
export function pricesOf({ piece, graph, parts }: Subject, odds: AssumedOdds): Prices {
  const priors = new Map(
    [...Map.groupBy(piece.parts, ({ id }) => parts.groupOf(id))].map(([group, members]) => [
      group,
      statePrior(members, odds, graph.broader),
    ]),
  );
  const seen = new Map(piece.observations.map((observation) => [observation.id, observation]));
  const priorOf = (part: PartId) => {
    const found = priors.get(parts.groupOf(part));
    if (found === undefined) throw new Error(`there is no part ${part}`);
    return found;
  };
  const first = (group: readonly PartId[]) => priorOf(group[0] as PartId);
  const sighting = (id: ObservationId) => {
    const found = seen.get(id);
    if (found === undefined) throw new Error(`there is no observation ${id}`);
    return found;
  };
  return {
    later: (group) => priceOf(first(group).original, first(group).later),
    reused: (group) => priceOf(first(group).original, first(group).reused),
    altered: (observation) => {
      const { original, reworked } = priorOf(sighting(observation).part);
      return priceOf(original, reworked);
    },
    misread: (observation) => priceOfWrong(odds.misread[sighting(observation).sureness]),
    claim: (claim) => priceOfWrong(1 - claimIsRight(claim, graph, odds)),
    assumption: priceOfWrong(odds.wrongFallback),
    separate: priceOfWrong(odds.misread.sure),
  };
}
