import type { Piece } from "../../domain/examination.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import type { Clock } from "../../ports/clock.ts";
import type { Store } from "../../ports/store.ts";
import { changedOrRefused, type ExaminationChanged } from "../examination-changed.ts";
import type { Refusal } from "../refusal.ts";
import { refuseUnfitPiece } from "../refuse-unfit-piece.ts";

/** Replaces the piece of an examination. `expectedVersion` is the version the change was made on. */
export async function changeExamination(
  ports: { readonly store: Store; readonly now: Clock },
  id: ExaminationId,
  expectedVersion: number,
  piece: Piece,
): Promise<ExaminationChanged | Refusal> {
  const refusal = await refuseUnfitPiece(ports, piece);
  if (refusal) return refusal;
  const answer = await ports.store.changeExamination(id, expectedVersion, piece, ports.now());
  return changedOrRefused(ports, id, answer);
}
