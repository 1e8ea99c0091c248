import { checkPiece } from "../../domain/check-piece.ts";
import type { Piece } from "../../domain/examination.ts";
import { nameInSentence } from "../../domain/name-in-sentence.ts";
import type { Neighbourhood } from "../../domain/neighbourhood.ts";
import type { ShiftsInWords } from "../../domain/shift-words.ts";
import { shiftsBetween } from "../../domain/shifts.ts";
import { verdictsOf } from "../../domain/verdicts.ts";
import type { Results } from "../../ports/results.ts";
import { partOddsOn } from "../../reasoning/dates/part-odds.ts";
import { type ReportReader, readReport } from "../../reasoning/explain/report-reader.ts";
import { shiftsInWords } from "../../reasoning/explain/shifts-in-words.ts";

/** What is said otherwise of a piece on two states of the graph, in words; nothing where nothing is. */
export function sayShifts(
  piece: Piece,
  then: Neighbourhood,
  now: Neighbourhood,
  { report }: Results,
): ShiftsInWords | undefined {
  const [fitted, fits] = [isFit(piece, then), isFit(piece, now)];
  if (fitted !== fits) {
    const [before, after] = [fitted, fits].map((fit) => (fit ? "can be examined" : "cannot be examined"));
    return {
      lines: [
        { kind: "record", says: "The record as it stands", before: before as string, now: after as string },
      ],
    };
  }
  if (!fits) return undefined;
  const [reportThen, reportNow] = [report(piece, then), report(piece, now)];
  const [oddsThen, oddsNow] = [partOddsOn(piece, then), partOddsOn(piece, now)];
  const shifts = shiftsBetween(verdictsOf(reportThen, oddsThen), verdictsOf(reportNow, oddsNow));
  const reader = (of: typeof reportNow, { terms, claims }: Neighbourhood): ReportReader => {
    const labels = new Map(terms.map((term) => [term.id, nameInSentence(term)]));
    const known = new Map(claims.map((claim) => [claim.id, claim]));
    return readReport(of, piece, {
      labelOf: (term) => labels.get(term) ?? term,
      claimOf: (claim) => known.get(claim),
    });
  };
  const odds = { before: oddsThen, now: oddsNow };
  return shifts && shiftsInWords(shifts, reader(reportThen, then), reader(reportNow, now), odds);
}

/** Whether a piece can be examined on a neighbourhood: it knows all that the piece names. */
export function isFit(piece: Piece, { terms }: Neighbourhood): boolean {
  const known = new Map(terms.map((term) => [term.id, term]));
  return checkPiece(piece, (term) => known.get(term)).length === 0;
}
