import { createContext, use } from "react";
import type { FormFields } from "#server/domain/proposals/form/form-fields.ts";

/** What the fields of a form share. */
export interface FormDesk {
  readonly fields: FormFields;
  readonly put: (fields: FormFields) => void;
  /** Why a field is refused; nothing while it was not touched. */
  readonly refusalAt: (field: string) => string | undefined;
}

export const FormDeskContext = createContext<FormDesk | undefined>(undefined);

/** The form that a field stands in. */
export function useFormDesk(): FormDesk {
  const desk = use(FormDeskContext);
  if (desk === undefined) throw new Error("This field stands outside of a form.");
  return desk;
}
