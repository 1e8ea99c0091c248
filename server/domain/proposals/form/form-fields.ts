import { isDraft } from "../../draft.ts";
import { type Problem, problem } from "../../problem.ts";

/** What stands in a form, as text by field. The fields of a claim are also the columns of a batch: docs/formats/claims-csv.md. */
export type FormFields = Readonly<Record<string, string>>;

export const MOST_FIELDS = 80;
export const LONGEST_FIELD = 5000;
/** Characters of all fields together. */
export const LONGEST_FORM = 40_000;
const FIELD_NAME = /^[a-z][a-z0-9.-]{0,39}$/;

/** What was sent as a form, or why it cannot be one. */
export function readFormFields(value: unknown): FormFields | Problem {
  const at = ["form"];
  if (!isDraft(value))
    return problem("WRONG_FORMAT", "A form has to be an object of texts by field; send one.", at);
  const fields = Object.entries(value);
  if (fields.length > MOST_FIELDS)
    return problem("TOO_LARGE", `A form has at most ${MOST_FIELDS} fields; leave some out.`, at);
  for (const [name, text] of fields) {
    if (!FIELD_NAME.test(name))
      return problem(
        "WRONG_FORMAT",
        "The name of a field has small letters, figures, hyphens and dots; correct it.",
        at,
      );
    if (typeof text !== "string")
      return problem("WRONG_FORMAT", `The field ${name} has to be a text.`, [...at, name]);
    if (text.length > LONGEST_FIELD)
      return problem(
        "TOO_LARGE",
        `The field ${name} has ${text.length} characters, and at most ${LONGEST_FIELD} are kept; shorten it.`,
        [...at, name],
      );
  }
  const length = fields.reduce((sum, [, text]) => sum + (text as string).length, 0);
  if (length > LONGEST_FORM)
    return problem(
      "TOO_LARGE",
      `The form has ${length} characters, and at most ${LONGEST_FORM} are kept; shorten it.`,
      at,
    );
  return Object.fromEntries(fields) as FormFields;
}

/** What a field says without blanks around it; nothing if it is empty. */
export const saidIn = (fields: FormFields, name: string): string | undefined => {
  const text = Object.hasOwn(fields, name) ? (fields[name] as string).trim() : "";
  return text === "" ? undefined : text;
};

/** Several things in one field, with a stroke between them. */
export const listIn = (fields: FormFields, name: string): readonly string[] =>
  (saidIn(fields, name) ?? "")
    .split("|")
    .map((one) => one.trim())
    .filter((one) => one !== "");

/** The same the other way round. */
export const asList = (texts: readonly string[]): string => texts.join(" | ");

/** A field as it stands in a form, left out where nothing is said. */
export const stated = (name: string, text: string | undefined): FormFields =>
  text === undefined ? {} : { [name]: text };
