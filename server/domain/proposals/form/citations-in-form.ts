import { CITATION_FIELDS, MOST_CITATIONS, placedField } from "./claim-fields.ts";
import { type FormFields, saidIn } from "./form-fields.ts";
import { FIELDS_OF_SOURCE } from "./source-of-fields.ts";

/** Fields of one citation in a form, with those of the source that it may describe. */
export const FIELDS_OF_CITED = [...CITATION_FIELDS, ...FIELDS_OF_SOURCE] as const;

type Cited = Readonly<Record<string, string | undefined>>;

const citedIn = (fields: FormFields, nth: number): Cited =>
  Object.fromEntries(FIELDS_OF_CITED.map((name) => [name, fields[placedField(name, nth)]]));

/** Places of a form up to the last that says anything of a citation. */
export function countCited(fields: FormFields): number {
  for (let count = MOST_CITATIONS; count > 0; count--)
    if (FIELDS_OF_CITED.some((name) => saidIn(fields, placedField(name, count - 1)) !== undefined))
      return count;
  return 0;
}

/** What is to be put into a form so that its citations stand in another order, or some are gone: `order` names the places as they are. */
export function reorderCited(fields: FormFields, order: readonly number[]): FormFields {
  const count = Math.max(countCited(fields), order.length);
  const put: Record<string, string> = {};
  for (let nth = 0; nth < count; nth++) {
    const from = order[nth];
    const cited = from === undefined ? {} : citedIn(fields, from);
    for (const name of FIELDS_OF_CITED) {
      const field = placedField(name, nth);
      if (cited[name] !== undefined || fields[field] !== undefined) put[field] = cited[name] ?? "";
    }
  }
  return put;
}
