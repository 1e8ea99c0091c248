import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { Subject } from "../check.ts";
import { type Curves, curvesOf } from "./curves.ts";
import { type FactorReader, factorReader } from "./factor-reader.ts";
import { type Mixer, mixer } from "./mixture.ts";
import { type Reducer, reducer } from "./reducer.ts";

/** What all weighings of one piece share, whatever the odds and wherever it is taken to be from: nothing is worked out twice. */
export interface Workings {
  readonly curves: Curves;
  readonly factors: FactorReader;
  readonly mixer: Mixer;
  readonly reduced: Reducer;
}

/** Years before the first of the grid that a claimed date may need. */
const BEFORE = 100;

/** Workings for a piece with nothing in them yet. The grid goes to the examination. */
export function workingsFor({ piece, graph, claimed }: Subject, { gridFrom }: AssumedOdds): Workings {
  const from = Math.min(gridFrom, Math.max(1, claimed[0] - BEFORE), piece.examined - 1);
  const curves = curvesOf(graph, { from, to: piece.examined });
  return { curves, factors: factorReader(), mixer: mixer(), reduced: reducer() };
}
