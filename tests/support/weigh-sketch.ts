import { ASSUMED } from "#server/domain/assumptions.ts";
import type { Piece } from "#server/domain/examination.ts";
import { id } from "#server/domain/ids.ts";
import type { Term } from "#server/domain/term.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import type { WeighingJob } from "#server/domain/weighing/job.ts";
import type { AssumedOdds } from "#server/domain/weighing/odds.ts";
import type { Stage } from "#server/domain/weighing/weighing.ts";
import { readSubject, type Subject } from "#server/reasoning/check.ts";
import type { Currency } from "#server/reasoning/dates/currency.ts";
import { placingOf } from "#server/reasoning/dates/placing.ts";
import { weighModel } from "#server/reasoning/dates/posterior.ts";
import { modelReader } from "#server/reasoning/dates/read-model.ts";
import { workingsFor } from "#server/reasoning/dates/workings.ts";
import { knowGraph } from "#server/reasoning/known-graph.ts";
import { aClaim, type ClaimSketch } from "./build-claim.ts";
import { neighbourhoodOf } from "./build-neighbourhood.ts";
import { aPiece, type PieceSketch } from "./build-piece.ts";
import { NORTH_AND_SOUTH } from "./examine-sketch.ts";

const neighbourhoodFor = (claims: readonly ClaimSketch[], terms: readonly Term[]) =>
  neighbourhoodOf(terms, claims.map(aClaim));

/** A sketched piece made ready on sketched claims. */
export const subjectOf = (
  claims: readonly ClaimSketch[],
  piece: PieceSketch,
  terms: readonly Term[] = NORTH_AND_SOUTH,
): Subject => readSubject(aPiece(piece), knowGraph(neighbourhoodFor(claims, terms), ASSUMED), ASSUMED);

/** All that is worked out of a subject before a stage reads it. */
export function weighSubject(subject: Subject, odds: AssumedOdds = ASSUMED_ODDS) {
  const workings = workingsFor(subject, odds);
  const read = modelReader(subject, odds, placingOf(subject, odds, workings));
  return { workings, read, posterior: weighModel(read(), workings.mixer) };
}

/** How common a feature was where a piece is from, asked by its year. */
export function currencyOf(
  claims: readonly ClaimSketch[],
  {
    feature = "F",
    odds = ASSUMED_ODDS,
    ...piece
  }: PieceSketch & { feature?: string; odds?: AssumedOdds } = {},
): Currency & { readonly in: (year: number) => number } {
  const subject = subjectOf(claims, { ...piece, observations: [{ id: "o", part: "top", feature }] });
  const placing = placingOf(subject, odds);
  const [check] = subject.checks.filter(({ part }) => part !== undefined);
  if (check === undefined) throw new Error("nothing was looked for");
  const found = placing.placedAt(check, 0).currency(id<"term">(feature));
  return { ...found, in: (year) => found.byYear[year - placing.grid.from] ?? Number.NaN };
}

/** A weighing asked for on sketched claims. */
export const jobOf = (
  claims: readonly ClaimSketch[],
  piece: Piece,
  stages: readonly Stage[],
  terms: readonly Term[] = NORTH_AND_SOUTH,
): WeighingJob => ({
  ...{ piece, stages, neighbourhood: neighbourhoodFor(claims, terms), assumptions: ASSUMED },
  report: { findings: [] },
});
