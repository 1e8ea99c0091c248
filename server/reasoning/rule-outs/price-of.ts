import type { Atom } from "../../domain/report.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { Holding } from "../atoms.ts";
import type { Subject } from "../check.ts";
import { claimIsRight } from "../dates/right-odds.ts";
import { statePrior } from "../dates/state-prior.ts";

/** What giving an atom up costs, in thousandths of a decade of odds; nothing makes up for what is claimed of the piece itself. */
export type PriceOf = (atom: Atom) => number;

/**
 * Prices from the odds assumed: round(1000 log10(P(right) / P(wrong))), halves up, never below 0. Of a part's being original: its
 * being later or reused, whichever is less unlikely. Rivals cost what all of them cost.
 */
export function pricesUnder(odds: AssumedOdds, { piece, graph, parts }: Subject): PriceOf {
  const sureness = new Map(piece.observations.map((observation) => [observation.id, observation.sureness]));
  const ofClaim = (claim: Parameters<typeof claimIsRight>[0]): number => {
    const right = claimIsRight(claim, graph, odds);
    return price(right, 1 - right);
  };
  const known = new Map<string, number>();
  const ofPart = (name: string): number => {
    const found = known.get(name);
    if (found !== undefined) return found;
    const group = piece.parts.filter(({ id }) => parts.groupOf(id) === name);
    const prior = statePrior(group, odds, graph.broader);
    const cost = Math.min(price(prior.original, prior.later), price(prior.original, prior.reused));
    known.set(name, cost);
    return cost;
  };
  return (atom) => {
    switch (atom.kind) {
      case "attr":
        return Number.POSITIVE_INFINITY;
      case "original":
        return ofPart(parts.groupOf(atom.part));
      case "observation":
        return ofMistake(odds.misread[sureness.get(atom.observation) ?? "sure"]);
      case "separate":
        return ofMistake(odds.misread.sure);
      case "assumption":
        return ofMistake(odds.wrongFallback);
      case "claim":
        return ofClaim(atom.claim);
      case "rivals":
        return atom.claims.reduce((sum, claim) => sum + ofClaim(claim), 0);
    }
  };
}

/** The least that has to be paid so that a set of atoms falls apart. */
export const leastPrice = (holding: Holding, priceOf: PriceOf): number =>
  holding.reduce((least, { atom }) => Math.min(least, priceOf(atom)), Number.POSITIVE_INFINITY);

const price = (right: number, wrong: number): number =>
  Math.max(0, Math.floor(1000 * Math.log10(right / wrong) + 0.5));
const ofMistake = (wrong: number): number => price(1 - wrong, wrong);
