import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { Check, Subject } from "../check.ts";
import type { View } from "../view.ts";
import type { CurrencyOf } from "./currency.ts";
import type { Grid } from "./curve.ts";
import type { FactorReader } from "./factor-reader.ts";
import type { Placed } from "./link-by-tool.ts";
import { workingsFor } from "./workings.ts";

/** The grid of a piece, and each check at one place of it, with the curves there. */
export interface Placing {
  readonly grid: Grid;
  readonly factors: FactorReader;
  /** `place` counts the places of the piece. */
  readonly placedAt: (check: Check, place: number) => Placed;
}

/** Places checks under odds. */
export function placingOf(
  subject: Subject,
  odds: AssumedOdds,
  workings = workingsFor(subject, odds),
): Placing {
  const { curves, factors } = workings;
  const known = new Map<View, CurrencyOf>();
  return {
    ...{ grid: curves.grid, factors },
    placedAt: (check, place) => {
      // A part with a region of its own is judged there, wherever the piece is from (E15).
      const view = (check.elsewhere ? check.views[0] : check.views[place]) as View;
      const currency = known.get(view) ?? curves.at(view, odds);
      known.set(view, currency);
      return { check, view, currency };
    },
  };
}
