import type { TermId } from "../../domain/ids.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { Check, Subject } from "../check.ts";
import type { View } from "../view.ts";
import { type Currency, currencyIn, type Forced } from "./currency.ts";
import type { Grid } from "./curve.ts";
import type { Placed } from "./factors-of.ts";

/** The grid of a piece, and each check at one place of it, with the curves there. */
export interface Placing {
  readonly grid: Grid;
  /** `place` counts the places of the piece. */
  readonly placedAt: (check: Check, place: number) => Placed;
}

/** Years before the first of the grid that a claimed date may need. */
const BEFORE = 100;

/** Places checks; curves are worked out once for each view. */
export function placingOf({ piece, graph, claimed }: Subject, odds: AssumedOdds): Placing {
  const from = Math.min(odds.gridFrom, Math.max(1, claimed[0] - BEFORE), piece.examined - 1);
  const grid: Grid = { from, to: piece.examined };
  const curves = new Map<View, (term: TermId, forced?: Forced) => Currency>();
  const currencyOf = (view: View) => {
    const known = curves.get(view) ?? currencyIn(view, graph, grid, odds);
    curves.set(view, known);
    return known;
  };
  return {
    grid,
    placedAt: (check, place) => {
      // A part with a region of its own is judged there, wherever the piece is from (E15).
      const view = (check.elsewhere ? check.views[0] : check.views[place]) as View;
      return { check, view, currency: currencyOf(view) };
    },
  };
}
