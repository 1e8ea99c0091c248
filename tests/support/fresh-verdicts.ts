import { ASSUMED } from "#server/domain/assumptions.ts";
import { checkPiece } from "#server/domain/check-piece.ts";
import type { Piece } from "#server/domain/examination.ts";
import type { Neighbourhood } from "#server/domain/neighbourhood.ts";
import { UNFIT, type Verdicts, verdictsOf } from "#server/domain/verdicts.ts";
import type { Store } from "#server/ports/store.ts";
import { askFor } from "#server/reasoning/ask-for.ts";
import { examine } from "#server/reasoning/examine.ts";
import { weigh } from "#server/reasoning/weigh.ts";

/** What a piece comes to on a revision, worked out from nothing by the whole report and the whole weighing of its dates. */
export async function freshVerdicts(store: Store, piece: Piece, at?: number): Promise<Verdicts> {
  const neighbourhood = await store.neighbourhood({
    ...askFor(piece, ASSUMED),
    ...(at === undefined ? {} : { at }),
  });
  const terms = new Map(neighbourhood.terms.map((term) => [term.id, term]));
  if (checkPiece(piece, (term) => terms.get(term)).length > 0) return UNFIT;
  return wholeVerdicts(piece, neighbourhood);
}

/** The same of a piece that can be examined. */
export function wholeVerdicts(piece: Piece, neighbourhood: Neighbourhood): Verdicts {
  const report = examine(piece, neighbourhood);
  const { dates } = weigh({ piece, neighbourhood, assumptions: ASSUMED, report, stages: ["dates"] });
  if (dates === undefined) throw new Error("the years were not worked out");
  return verdictsOf(report, dates.parts);
}
