import type { ExaminationId } from "../../domain/ids.ts";
import type { Clock } from "../../ports/clock.ts";
import type { Store } from "../../ports/store.ts";
import { changedOrRefused, type ExaminationChanged } from "../examination-changed.ts";
import type { Refusal } from "../refusal.ts";

/** Takes back the newest change of an examination, a deletion too. */
export async function undoExamination(
  ports: { readonly store: Store; readonly now: Clock },
  id: ExaminationId,
  expectedVersion: number,
): Promise<ExaminationChanged | Refusal> {
  const answer = await ports.store.undoExamination(id, expectedVersion, ports.now());
  return changedOrRefused(ports, id, answer);
}
