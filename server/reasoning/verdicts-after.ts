import { ASSUMED } from "../domain/assumptions.ts";
import type { Change } from "../domain/change.ts";
import type { Piece } from "../domain/examination.ts";
import type { Neighbourhood } from "../domain/neighbourhood.ts";
import { likelyStatesOf, type Verdicts } from "../domain/verdicts.ts";
import { readSubject, type Subject } from "./check.ts";
import { partOddsOf } from "./dates/part-odds.ts";
import { knowGraph } from "./known-graph.ts";
import { editedIn, readAlike } from "./read-alike.ts";
import { canBeExamined, reportVerdictsOfSubject, verdictsOfSubject, verdictsOn } from "./verdicts-on.ts";

/**
 * What a piece comes to after a change, or `same` where it was found before working it out that nothing that verdicts are worked
 * out from is another. To find that is less work than the verdicts; of the report and the odds of the parts, that which reads the
 * same is not worked out again. `known` gives the verdicts before.
 */
export function verdictsAfter(
  piece: Piece,
  before: Neighbourhood,
  after: Neighbourhood,
  change: Change,
  known: () => Verdicts,
): Verdicts | "same" {
  const edited = editedIn(change);
  if (edited === undefined || !haveSameReach(before, after)) return verdictsOn(piece, after);
  const [was, is] = [before, after].map((neighbourhood) =>
    readSubject(piece, knowGraph(neighbourhood, ASSUMED), ASSUMED),
  ) as [Subject, Subject];
  const alike = readAlike(was, is, edited);
  if (alike.report && alike.odds) return "same";
  // No term is another, so that it can be examined after the change where it can be before it.
  if (!canBeExamined(piece, before)) return "same";
  if (alike.report) return { ...known(), states: likelyStatesOf(partOddsOf(is)) };
  if (alike.odds) return { ...reportVerdictsOfSubject(is), states: known().states };
  return verdictsOfSubject(is);
}

/** Then all claims about what either comes to are the same, but for those of the change. */
function haveSameReach(a: Neighbourhood, b: Neighbourhood): boolean {
  if (a.depths.size !== b.depths.size) return false;
  for (const term of a.depths.keys()) if (!b.depths.has(term)) return false;
  return true;
}
