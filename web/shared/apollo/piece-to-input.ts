import type { Piece } from "#server/domain/examination.ts";
import type { PieceInput } from "./schema-types.graphql.ts";

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
});
