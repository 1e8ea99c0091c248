import type { Piece } from "../domain/examination.ts";
import { readPiece } from "../formats/read-piece.ts";
import { type Refusal, refusalFrom } from "../use-cases/refusal.ts";
import type { PieceInputRef } from "./types/piece-input.ts";

export type PieceInput = PieceInputRef["$inferInput"];

/** Drops what is null: an input may say null for what is not stated. */
function stated(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(stated);
  if (value === null || typeof value !== "object") return value;
  const members = Object.entries(value).filter(([, member]) => member !== null && member !== undefined);
  return Object.fromEntries(members.map(([name, member]) => [name, stated(member)]));
}

/** Gives the piece of an input to `use`, or refuses an input that is not of the piece format (lengths, form of ids). */
export async function withPiece<Answer>(
  input: PieceInput,
  use: (piece: Piece) => Promise<Answer | Refusal>,
): Promise<Answer | Refusal> {
  const piece = readPiece(stated(input));
  return "title" in piece ? use(piece) : (refusalFrom(piece) as Refusal);
}
