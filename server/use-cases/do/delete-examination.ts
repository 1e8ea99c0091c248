import type { ExaminationId } from "../../domain/ids.ts";
import type { Clock } from "../../ports/clock.ts";
import type { Store } from "../../ports/store.ts";
import { changedOrRefused, type ExaminationChanged } from "../examination-changed.ts";
import type { Refusal } from "../refusal.ts";

/** Takes an examination out of the lists; an undo brings it back. */
export async function deleteExamination(
  ports: { readonly store: Store; readonly now: Clock },
  id: ExaminationId,
  expectedVersion: number,
): Promise<ExaminationChanged | Refusal> {
  const answer = await ports.store.deleteExamination(id, expectedVersion, ports.now());
  return changedOrRefused(ports, id, answer);
}
