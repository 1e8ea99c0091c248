import { ASSUMED } from "#server/domain/assumptions.ts";
import type { Term } from "#server/domain/term.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import type { Mend, Mends } from "#server/domain/weighing/mends.ts";
import type { AssumedOdds } from "#server/domain/weighing/odds.ts";
import { readSubject, type Subject } from "#server/reasoning/check.ts";
import { knowGraph } from "#server/reasoning/known-graph.ts";
import type { MendBudget } from "#server/reasoning/mends/budget.ts";
import { readMends } from "#server/reasoning/mends/read-mends.ts";
import { aClaim, type ClaimSketch } from "./build-claim.ts";
import { neighbourhoodOf } from "./build-neighbourhood.ts";
import { aPiece, type PieceSketch } from "./build-piece.ts";
import { NORTH_AND_SOUTH } from "./examine-sketch.ts";
import { USUAL_BUDGET, wordsOf } from "./mend-instance.ts";

export const subjectOfSketch = (
  claims: readonly ClaimSketch[],
  piece: PieceSketch,
  terms: readonly Term[] = NORTH_AND_SOUTH,
): Subject =>
  readSubject(aPiece(piece), knowGraph(neighbourhoodOf(terms, claims.map(aClaim)), ASSUMED), ASSUMED);

/** The mends of a sketched piece on sketched claims, between the North and the South. */
export const mendSketch = (
  claims: readonly ClaimSketch[],
  piece: PieceSketch,
  odds: Partial<AssumedOdds> = {},
  budget: Partial<MendBudget> = {},
): { readonly possible: Mends; readonly usual: Mends } =>
  readMends(subjectOfSketch(claims, piece), { ...ASSUMED_ODDS, ...odds }, { ...USUAL_BUDGET, ...budget });

/** A mend as words: `210 later(top)`. */
export const mendText = (mend: Mend | undefined): string =>
  mend === undefined ? "none" : `${mend.price} ${wordsOf(mend.givenUp) || "nothing"}`;
export const listedTexts = ({ listed }: Mends): string[] => listed.map(mendText);
