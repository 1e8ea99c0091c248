import { ASSUMED } from "../domain/assumptions.ts";
import type { Piece } from "../domain/examination.ts";
import type { Neighbourhood } from "../domain/neighbourhood.ts";
import type { Assumptions } from "../domain/report.ts";
import { oddsFor } from "../domain/weighing/chosen-odds.ts";
import { STAGES, type Stage, type Weighing } from "../domain/weighing/weighing.ts";
import { readSubject } from "./check.ts";
import { type KnownMixtures, weighModel } from "./dates/posterior.ts";
import { readDates } from "./dates/read-dates.ts";
import { modelReader } from "./dates/read-model.ts";
import { ENGINE } from "./engine.ts";
import { knowGraph } from "./known-graph.ts";
import { readSensitivity } from "./sensitivity/read-sensitivity.ts";
import { readWeights } from "./weights/read-weights.ts";

/** The answer of one stage. */
export type Weighed = {
  readonly [S in Stage]: { readonly stage: S; readonly answer: NonNullable<Weighing[S]> };
}[Stage];

/** The weighing of a piece before any stage is through. */
export function unweighed(piece: Piece, { revision }: Neighbourhood): Weighing {
  const missing = STAGES.map((stage) => ({ stage, why: "stopped" as const }));
  return {
    format: "scribeline/weighing",
    version: 1,
    engine: ENGINE,
    revision,
    odds: oddsFor(piece.odds),
    missing,
  };
}

/** A weighing with one more stage through. */
export const withStage = (weighing: Weighing, { stage, answer }: Weighed): Weighing => ({
  ...weighing,
  [stage]: answer,
  missing: weighing.missing.filter((left) => left.stage !== stage),
});

/**
 * Weighs a piece stage by stage, so that whoever runs it can stop between two of them. The piece is valid; `neighbourhood` is what
 * `askFor` asks for. The same answers for the same input.
 */
export function* weighStages(
  piece: Piece,
  neighbourhood: Neighbourhood,
  assumptions: Assumptions = ASSUMED,
): Generator<Weighed> {
  const subject = readSubject(piece, knowGraph(neighbourhood, assumptions), assumptions);
  const odds = oddsFor(piece.odds);
  const mixtures: KnownMixtures = new Map();
  const read = modelReader(subject, odds);
  const model = read();
  yield { stage: "dates", answer: readDates(weighModel(model, mixtures), subject.claimed, mixtures) };
  yield { stage: "weights", answer: readWeights(model, subject.claimed, mixtures) };
  yield { stage: "sensitivity", answer: readSensitivity(subject, odds, read, mixtures) };
}

/** Weighs a piece to the end. */
export function weigh(
  piece: Piece,
  neighbourhood: Neighbourhood,
  assumptions: Assumptions = ASSUMED,
): Weighing {
  return [...weighStages(piece, neighbourhood, assumptions)].reduce(
    withStage,
    unweighed(piece, neighbourhood),
  );
}
