import {
  CITATION_FIELDS,
  citationField,
  FIELDS_OF_RELATION,
  isRelation,
  MOST_CITATIONS,
} from "#server/domain/proposals/form/claim-fields.ts";
import type { FormFields } from "#server/domain/proposals/form/form-fields.ts";
import { FIELDS_OF_SOURCE } from "#server/domain/proposals/form/source-of-fields.ts";
import type { WritingKind } from "./kinds.ts";

const OF_CLAIM = ["relation", "strength", "status", "note", "row", "about"];
const CITED = Array.from({ length: MOST_CITATIONS }, (_, nth) =>
  CITATION_FIELDS.map((name) => citationField(name, nth)),
).flat();

/** The fields that belong to what is chosen now; what was written for another choice stays in the form and is not sent. */
export function formToSend(kind: WritingKind["id"], fields: FormFields): FormFields {
  const relation = kind === "exception" ? "void when" : fields["relation"];
  if (!isRelation(relation)) return fields;
  const isPrinted = fields["basis"] === "published";
  const wanted: readonly string[] = [
    ...OF_CLAIM,
    ...FIELDS_OF_RELATION[relation],
    ...CITED,
    ...(isPrinted && !fields["source"] ? FIELDS_OF_SOURCE : []),
  ];
  const needless = isPrinted ? [] : ["source", "locator"];
  return Object.fromEntries(
    Object.entries({ ...fields, relation }).filter(
      ([name]) => wanted.includes(name) && !needless.includes(name),
    ),
  );
}
