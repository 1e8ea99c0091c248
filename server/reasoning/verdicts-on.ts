import { ASSUMED } from "../domain/assumptions.ts";
import { checkPiece } from "../domain/check-piece.ts";
import type { Piece } from "../domain/examination.ts";
import type { Neighbourhood } from "../domain/neighbourhood.ts";
import type { Assumptions } from "../domain/report.ts";
import { likelyStatesOf, reportVerdictsOf, UNFIT, type Verdicts } from "../domain/verdicts.ts";
import { type Check, readSubject, type Subject } from "./check.ts";
import { partOddsOf } from "./dates/part-odds.ts";
import { reasonUnseen, tell } from "./find.ts";
import { knowGraph } from "./known-graph.ts";
import { worstOf } from "./part-summaries.ts";
import { ruleOut } from "./rule-outs/rule-out.ts";
import { readSigns } from "./signs.ts";

/**
 * What a piece comes to on a neighbourhood: the verdicts of its report, without working out what they rest on (no supports, no
 * paths, no gaps), which is most of the work, and what its parts most probably are, without years, weights or stories.
 */
export function verdictsOn(
  piece: Piece,
  neighbourhood: Neighbourhood,
  assumptions: Assumptions = ASSUMED,
): Verdicts {
  if (!canBeExamined(piece, neighbourhood)) return UNFIT;
  return verdictsOfSubject(readSubject(piece, knowGraph(neighbourhood, assumptions), assumptions));
}

/** Whether the graph knows what the piece names, as what it is named as. */
export function canBeExamined(piece: Piece, { terms }: Neighbourhood): boolean {
  const byId = new Map(terms.map((term) => [term.id, term]));
  return checkPiece(piece, (term) => byId.get(term)).length === 0;
}

/** The same of a piece that was made ready, and that can be examined. */
export const verdictsOfSubject = (subject: Subject): Verdicts => ({
  ...reportVerdictsOfSubject(subject),
  states: likelyStatesOf(partOddsOf(subject)),
});

/** The part of them that follows from the report. */
export function reportVerdictsOfSubject(subject: Subject): Omit<Verdicts, "states"> {
  const { piece } = subject;
  const told = subject.checks.map((check) => ({ check, verdict: verdictOf(check, subject.claimed) }));
  const signs = readSigns(subject);
  return reportVerdictsOf({
    attribution: { places: subject.places },
    findings: told.map(({ check, verdict }) => ({ id: check.id, ...verdict })),
    ruleOuts: ruleOut(subject).ruleOuts,
    parts: piece.parts.map(({ id }) => ({
      part: id,
      speaks: worstOf(
        told.filter(({ check }) => check.part === id).map(({ verdict }) => verdict),
        signs.filter(({ part }) => part === id),
      ),
    })),
  });
}

function verdictOf(check: Check, claimed: Parameters<typeof tell>[1]) {
  const told = tell(check, claimed);
  if (told === undefined) return { label: "silent" as const, reason: reasonUnseen(check) };
  const [silence] = told.silences;
  return { ...told.verdict, ...(silence === undefined ? {} : { reason: silence.reason }) };
}
