import type { Piece } from "#server/domain/examination.ts";
import type { DatePrior } from "#server/domain/weighing/odds.ts";
import type { DatePrior as DatePriorCode, PieceInput } from "./schema-types.graphql.ts";

/** The priors on the date by their names in the schema. */
const datePriorCodes: Readonly<Record<DatePrior, DatePriorCode>> = {
  uniform: "UNIFORM",
  "as claimed": "AS_CLAIMED",
  production: "PRODUCTION",
};

/** The piece as the server takes it. */
export const pieceToInput = (piece: Piece): PieceInput => ({
  title: piece.title,
  invented: piece.invented,
  note: piece.note ?? null,
  examined: piece.examined,
  attribution: piece.attribution,
  parts: piece.parts,
  observations: piece.observations.map((seen) => ({
    ...seen,
    seen: seen.seen.toUpperCase() as Uppercase<typeof seen.seen>,
    sureness: seen.sureness.toUpperCase() as Uppercase<typeof seen.sureness>,
  })),
  together: piece.together,
  separate: piece.separate,
  odds:
    piece.odds === undefined
      ? null
      : {
          ...piece.odds,
          datePrior: piece.odds.datePrior === undefined ? null : datePriorCodes[piece.odds.datePrior],
          parts: piece.odds.parts ?? null,
        },
});
