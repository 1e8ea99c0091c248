import type { Examination } from "../domain/examination.ts";
import type { ExaminationId } from "../domain/ids.ts";
import { isProblem, type Problem } from "../domain/problem.ts";
import type { Store } from "../ports/store.ts";
import type { Refusal } from "./refusal.ts";

/** An examination after a change of it. */
export interface ExaminationChanged {
  readonly examination: Examination;
}

/** What the store made of a change; where somebody else was first, the refusal shows how the examination stands. */
export async function changedOrRefused(
  { store }: { readonly store: Store },
  id: ExaminationId,
  answer: Examination | Problem,
): Promise<ExaminationChanged | Refusal> {
  if (!isProblem(answer)) return { examination: answer };
  const current = answer.code === "CHANGED_MEANWHILE" ? await store.examination(id) : undefined;
  return { refused: [answer], ...(current === undefined ? {} : { current }) };
}
