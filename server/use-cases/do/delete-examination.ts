import type { ExaminationId } from "../../domain/ids.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller, signed } from "../acting.ts";
import { changedOrRefused, type ExaminationChanged } from "../examination-changed.ts";
import type { Refusal } from "../refusal.ts";

/** Takes an examination out of the lists; an undo brings it back. */
export async function deleteExamination(
  ports: Acting & { readonly store: Store },
  id: ExaminationId,
  expectedVersion: number,
): Promise<ExaminationChanged | Refusal> {
  const refusal = refuseCaller(ports, "change an examination");
  if (refusal) return refusal;
  const answer = await ports.store.deleteExamination(
    id,
    expectedVersion,
    ports.now(),
    signed(ports, "delete examination", id),
  );
  return changedOrRefused(ports, id, answer);
}
