import type { Examination } from "../../domain/examination.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import type { Store } from "../../ports/store.ts";

/** An examination as it stands; a deleted one is found too, so that it can be brought back. */
export const findExamination = (
  { store }: { readonly store: Store },
  id: ExaminationId,
): Promise<Examination | undefined> => store.examination(id);
