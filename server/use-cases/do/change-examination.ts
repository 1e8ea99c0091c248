import type { Piece } from "../../domain/examination.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import { isProblem } from "../../domain/problem.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller, signed } from "../acting.ts";
import { changedOrRefused, type ExaminationChanged } from "../examination-changed.ts";
import { isRefusal, type Refusal } from "../refusal.ts";
import { refuseUnfitPiece } from "../refuse-unfit-piece.ts";
import { mergeMeanwhile } from "./merge-meanwhile.ts";

/** How often others may be first, one after the other, before a change is refused. */
const MOST_TRIES = 50;

/**
 * Replaces the piece of an examination. `expectedVersion` is the version the change was made on; what others did since then is kept
 * beside it (Z2).
 */
export async function changeExamination(
  ports: Acting & { readonly store: Store },
  id: ExaminationId,
  expectedVersion: number,
  piece: Piece,
): Promise<ExaminationChanged | Refusal> {
  const refusal = refuseCaller(ports, "change an examination") ?? (await refuseUnfitPiece(ports, piece));
  if (refusal) return refusal;
  let [on, next] = [expectedVersion, piece];
  for (let tries = 1; ; tries++) {
    const along = signed(ports, "change examination", id);
    const answer = await ports.store.changeExamination(id, on, next, along.deed.at, along);
    const isMeanwhile = isProblem(answer) && answer.code === "CHANGED_MEANWHILE" && tries < MOST_TRIES;
    const merged = isMeanwhile ? await mergeMeanwhile(ports, id, expectedVersion, piece) : undefined;
    if (merged === undefined) return changedOrRefused(ports, id, answer);
    if (isRefusal(merged)) return merged;
    if (merged.piece === undefined) return { examination: merged.current };
    [on, next] = [merged.current.version, merged.piece];
  }
}
