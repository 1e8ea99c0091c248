import type { Examination } from "../../domain/examination.ts";
import type { Page, PageAsk, Store } from "../../ports/store.ts";

/** Examinations that are not deleted, the one changed last first. */
export const listExaminations = (
  { store }: { readonly store: Store },
  page: PageAsk,
): Promise<Page<Examination>> => store.listExaminations(page);
