import { isProblem } from "#server/domain/problem.ts";
import { readDating } from "#server/domain/read-dating.ts";
import { makeYearAxis, type YearAxis } from "../shared/years/year-axis.ts";
import type { PieceRowFragment } from "./PieceRow.graphql.ts";

/** Years shown before the earliest and after the latest claimed year: what usually bounds a feature lies within. */
const AIR = 110;
const EARLIEST = 1500;
const LATEST = 2025;

/** One axis for all pieces of a list, from the years claimed of them. */
export function axisForPieces(pieces: readonly PieceRowFragment[]): YearAxis {
  const years = pieces.flatMap(({ piece }) => {
    const dating = readDating(piece.attribution.date, "event");
    return isProblem(dating) ? [] : [dating.begin[0], dating.end[1]];
  });
  const finite = years.filter((year) => Number.isFinite(year) && year >= EARLIEST && year <= LATEST);
  if (finite.length === 0) return makeYearAxis(1650, 1900);
  return makeYearAxis(
    Math.max(EARLIEST, Math.min(...finite) - AIR),
    Math.min(LATEST, Math.max(...finite) + AIR),
  );
}
