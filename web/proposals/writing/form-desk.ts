import { createContext, use } from "react";
import { placedField } from "#server/domain/proposals/form/claim-fields.ts";
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

/** A desk whose fields stand under other names in the form: `outer` gives the name there, `inner` the name here or nothing. */
function renamedDesk(
  desk: FormDesk,
  outer: (name: string) => string,
  inner: (field: string) => string | undefined,
): FormDesk {
  return {
    fields: Object.fromEntries(
      Object.entries(desk.fields).flatMap(([field, text]) => {
        const name = inner(field);
        return name === undefined ? [] : [[name, text]];
      }),
    ),
    put: (fields) =>
      desk.put(Object.fromEntries(Object.entries(fields).map(([name, text]) => [outer(name), text]))),
    refusalAt: (name) => desk.refusalAt(outer(name)),
  };
}

/** The desk of one of the citations, counted from 0: its fields have the names of the first. */
export function deskOfCited(desk: FormDesk, nth: number, names: readonly string[]): FormDesk {
  const back = new Map(names.map((name) => [placedField(name, nth), name]));
  return renamedDesk(
    desk,
    (name) => placedField(name, nth),
    (field) => back.get(field),
  );
}

/** What the fields of an exception have before their names, beside those of the claim that it is an exception of. */
export const OF_EXCEPTION = "exception-";

/** The desk of an exception within a correction. */
export function deskOfException(desk: FormDesk): FormDesk {
  const own = renamedDesk(
    desk,
    (name) => `${OF_EXCEPTION}${name}`,
    (field) => (field.startsWith(OF_EXCEPTION) ? field.slice(OF_EXCEPTION.length) : undefined),
  );
  return { ...own, fields: { ...own.fields, relation: "void when" } };
}
