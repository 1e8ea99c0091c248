import { ASSUMED } from "../../domain/assumptions.ts";
import type { Piece } from "../../domain/examination.ts";
import type { Neighbourhood } from "../../domain/neighbourhood.ts";
import { oddsFor } from "../../domain/weighing/chosen-odds.ts";
import type { PartOdds } from "../../domain/weighing/dates.ts";
import type { StateOdds } from "../../domain/weighing/odds.ts";
import { significant } from "../../domain/weighing/significant.ts";
import { readSubject, type Subject } from "../check.ts";
import { knowGraph } from "../known-graph.ts";
import { placingOf } from "./placing.ts";
import { type Posterior, statesOf, weighModel } from "./posterior.ts";
import { modelReader } from "./read-model.ts";
import { workingsFor } from "./workings.ts";

/** What each part, or group of parts that are together, is to the piece, as the dates of a weighing have it; its years are left out. */
export function partOddsOf(subject: Subject): readonly PartOdds[] {
  const odds = oddsFor(subject.piece.odds);
  const workings = workingsFor(subject, odds);
  const model = modelReader(subject, odds, placingOf(subject, odds, workings))();
  return partOddsIn(weighModel(model, workings.mixer));
}

/** The same of a piece that can be examined on a neighbourhood. */
export const partOddsOn = (piece: Piece, neighbourhood: Neighbourhood): readonly PartOdds[] =>
  partOddsOf(readSubject(piece, knowGraph(neighbourhood, ASSUMED), ASSUMED));

/** The same of a model that was weighed. */
export const partOddsIn = (posterior: Posterior): readonly PartOdds[] =>
  (posterior.model.cases[0]?.groups ?? []).map(({ parts, prior }, i) => ({
    parts,
    prior: roundedStates(prior),
    odds: roundedStates(statesOf(posterior, i)),
  }));

/** As reports carry them. */
export const roundedStates = ({ original, later, reused, reworked }: StateOdds): StateOdds => ({
  original: significant(original),
  later: significant(later),
  reused: significant(reused),
  reworked: significant(reworked),
});
