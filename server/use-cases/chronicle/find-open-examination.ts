import type { Examination } from "../../domain/examination.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import { problem } from "../../domain/problem.ts";
import type { Store } from "../../ports/store.ts";
import type { Acting } from "../acting.ts";
import { findExamination } from "../ask/find-examination.ts";
import type { Refusal } from "../refusal.ts";

/** An examination that is not deleted. */
export async function findOpenExamination(
  ports: Acting & { readonly store: Store },
  id: ExaminationId,
): Promise<Examination | Refusal> {
  const examination = await findExamination(ports, id);
  if (examination !== undefined && !examination.deleted) return examination;
  return {
    refused: [
      problem("UNKNOWN_EXAMINATION", `There is no examination ${id}; look it up in the list.`, ["id"]),
    ],
  };
}
