import type { PartId } from "../ids.ts";
import { ASSUMED_ODDS } from "./assumed-odds.ts";
import type { AssumedOdds, DatePrior, PlainStateOdds } from "./odds.ts";

/** What the examiner assumes of this piece in place of the usual numbers; what is left out stays as assumed for all. */
export interface ChosenOdds {
  readonly datePrior?: DatePrior;
  readonly parts?: readonly ({ readonly part: PartId } & PlainStateOdds)[];
  /** Times the probability that claims are wrong: 1 as assumed, 2 doubts them twice as much. */
  readonly wrongClaims?: number;
  /** Probability outside all known years. */
  readonly leak?: number;
  /** Prior of "made later to look old"; without it that story is not weighed. */
  readonly madeToDeceive?: number;
}

/** No claim is taken as wrong with more than this. */
const MOST_WRONG = 0.99;

/** Every number of the weighing, with what the examiner chose. */
export function oddsFor(chosen: ChosenOdds = {}): AssumedOdds {
  const { datePrior, parts = [], wrongClaims = 1, leak, madeToDeceive } = chosen;
  const wrong = (probability: number): number => Math.min(MOST_WRONG, probability * wrongClaims);
  const { certain, firm, usual, tentative } = ASSUMED_ODDS.wrongClaim;
  return {
    ...ASSUMED_ODDS,
    ofParts: parts.map(({ part, original, later, reused }) => ({ part, odds: { original, later, reused } })),
    wrongClaim: {
      certain: wrong(certain),
      firm: wrong(firm),
      usual: wrong(usual),
      tentative: wrong(tentative),
    },
    wrongFallback: wrong(ASSUMED_ODDS.wrongFallback),
    ...(datePrior === undefined ? {} : { datePrior }),
    ...(leak === undefined ? {} : { leak }),
    ...(madeToDeceive === undefined ? {} : { madeToDeceive }),
  };
}
