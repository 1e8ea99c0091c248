import type { Piece } from "../../domain/examination.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller, signed } from "../acting.ts";
import { changedOrRefused, type ExaminationChanged } from "../examination-changed.ts";
import type { Refusal } from "../refusal.ts";
import { refuseUnfitPiece } from "../refuse-unfit-piece.ts";

/** Replaces the piece of an examination. `expectedVersion` is the version the change was made on. */
export async function changeExamination(
  ports: Acting & { readonly store: Store },
  id: ExaminationId,
  expectedVersion: number,
  piece: Piece,
): Promise<ExaminationChanged | Refusal> {
  const refusal = refuseCaller(ports, "change an examination") ?? (await refuseUnfitPiece(ports, piece));
  if (refusal) return refusal;
  const answer = await ports.store.changeExamination(
    id,
    expectedVersion,
    piece,
    ports.now(),
    signed(ports, "change examination", id),
  );
  return changedOrRefused(ports, id, answer);
}
