import type { Examination, Piece } from "../../domain/examination.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import { isSame } from "../../domain/is-same.ts";
import { mergePieces } from "../../domain/merge-pieces/merge-pieces.ts";
import type { Conflict } from "../../domain/merge-pieces/merge-value.ts";
import { type Problem, problem } from "../../domain/problem.ts";
import type { Store } from "../../ports/store.ts";
import { type Refusal, refusalFrom } from "../refusal.ts";
import { refuseUnfitPiece } from "../refuse-unfit-piece.ts";

/** A change brought together with what others did meanwhile; without a piece there is nothing left to store. */
export interface Merged {
  readonly current: Examination;
  readonly piece?: Piece;
}

/**
 * Brings a piece that was made of the version `on` together with how the examination stands now (Z1). Refused with how it stands
 * where both changed one thing in different ways, or where what comes of it contradicts itself; nothing where there is no such version.
 */
export async function mergeMeanwhile(
  ports: { readonly store: Store },
  id: ExaminationId,
  on: number,
  piece: Piece,
): Promise<Merged | Refusal | undefined> {
  const [base, current] = await Promise.all([ports.store.examination(id, on), ports.store.examination(id)]);
  if (base === undefined || current === undefined) return undefined;
  const merged = mergePieces(base.piece, piece, current.piece);
  const refusal =
    refusalFrom(merged.conflicts.map(conflictAsProblem)) ?? (await refuseUnfitPiece(ports, merged.piece));
  if (refusal) return { ...refusal, current };
  return isSame(merged.piece, current.piece) ? { current } : { current, piece: merged.piece };
}

const conflictAsProblem = ({ path }: Conflict): Problem =>
  problem(
    "CHANGED_MEANWHILE",
    `Somebody else changed this meanwhile in another way: ${path.join(", ")}. Look at both, then say which is to stand.`,
    path,
  );
