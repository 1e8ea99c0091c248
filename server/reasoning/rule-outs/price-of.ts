import type { Atom } from "../../domain/report.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { Holding } from "../atoms.ts";
import type { Subject } from "../check.ts";
import { pricesOf } from "../mends/prices.ts";

/** What giving an atom up costs; infinite for what is claimed of the piece itself, and for what cannot be. */
export type PriceOf = (atom: Atom) => number;

const NEVER = Number.POSITIVE_INFINITY;

/**
 * Prices of atoms, those of mends: a part's being original costs what its being later or reused does, whichever is less unlikely; rivals
 * cost what all of them cost.
 */
export function pricesUnder(odds: AssumedOdds, subject: Subject): PriceOf {
  const prices = pricesOf(subject, odds);
  const known = new Map<string, number>();
  const ofClaim: (claim: Parameters<typeof prices.claim>[0]) => number = (claim) =>
    kept(claim, known, () => prices.claim(claim) ?? NEVER);
  return (atom) => {
    switch (atom.kind) {
      case "attr":
        return NEVER;
      case "original":
        return kept(atom.part, known, () =>
          Math.min(prices.later([atom.part]) ?? NEVER, prices.reused([atom.part]) ?? NEVER),
        );
      case "observation":
        return kept(atom.observation, known, () => prices.misread(atom.observation) ?? NEVER);
      case "separate":
        return prices.separate ?? NEVER;
      case "assumption":
        return prices.assumption ?? NEVER;
      case "claim":
        return ofClaim(atom.claim);
      case "rivals":
        return atom.claims.reduce((sum, claim) => sum + ofClaim(claim), 0);
    }
  };
}

/** The least that has to be paid so that a set of atoms falls apart. */
export const leastPrice = (holding: Holding, priceOf: PriceOf): number =>
  holding.reduce((least, { atom }) => Math.min(least, priceOf(atom)), NEVER);

function kept(name: string, known: Map<string, number>, work: () => number): number {
  const found = known.get(name) ?? work();
  known.set(name, found);
  return found;
}
