import pieceSchema from "../../docs/formats/piece.schema.json" with { type: "json" };
import type { Piece } from "../domain/examination.ts";
import type { Problem } from "../domain/problem.ts";
import { readBySchema } from "./read-by-schema.ts";

/** What a file of a piece holds beside the piece itself. */
interface FileOfPiece {
  readonly format?: string;
  readonly version?: number;
  readonly id?: string;
}

const read = readBySchema<Piece & FileOfPiece>(pieceSchema);

/** Reads a piece of the format docs/formats/piece.schema.json, or says what is wrong with it, place by place. */
export function readPiece(value: unknown): Piece | readonly Problem[] {
  const piece = read(value);
  if (!("title" in piece)) return piece;
  const { format: _, version: __, id: ___, ...rest } = piece;
  return rest;
}
