import type { ExaminationId } from "../../domain/ids.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller, signed } from "../acting.ts";
import { changedOrRefused, type ExaminationChanged } from "../examination-changed.ts";
import type { Refusal } from "../refusal.ts";

/** Takes back the newest change of an examination, a deletion too. */
export async function undoExamination(
  ports: Acting & { readonly store: Store },
  id: ExaminationId,
  expectedVersion: number,
): Promise<ExaminationChanged | Refusal> {
  const refusal = refuseCaller(ports, "change an examination");
  if (refusal) return refusal;
  const answer = await ports.store.undoExamination(
    id,
    expectedVersion,
    ports.now(),
    signed(ports, "undo examination", id),
  );
  return changedOrRefused(ports, id, answer);
}
