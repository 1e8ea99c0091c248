import {
  CITATION_FIELDS,
  COMMON_FIELDS,
  FIELDS_OF_RELATION,
  isRelation,
  MOST_CITATIONS,
  placedField,
} from "#server/domain/proposals/form/claim-fields.ts";
import type { FormFields } from "#server/domain/proposals/form/form-fields.ts";
import { FIELDS_OF_SOURCE } from "#server/domain/proposals/form/source-of-fields.ts";
import type { ProposalKind } from "#web/shared/apollo/schema-types.graphql.ts";
import { wrongIn } from "./asked-in-form.ts";
import { OF_EXCEPTION } from "./form-desk.ts";

/** The fields that belong to what is chosen now; what was written for another choice stays in the form and is not sent. */
export function formToSend(kind: ProposalKind, fields: FormFields, why: string): FormFields {
  const about: FormFields = fields["about"] === undefined ? {} : { about: fields["about"] };
  switch (kind) {
    case "RETIREMENT":
      return { ...about, reason: why };
    case "MERGE":
      return { ...about, into: fields["into"] ?? "" };
    case "EXCEPTION":
      return claimToSend({ ...strippedOf(fields), relation: "void when", of: fields["about"] ?? "" });
    default: {
      const isRestored = wrongIn(fields) === "restore";
      const { wrong: _, into: __, ...rest } = fields;
      const own = Object.entries(rest).filter(([name]) => !name.startsWith(OF_EXCEPTION));
      const said: FormFields = { ...Object.fromEntries(own), ...(isRestored ? { status: "accepted" } : {}) };
      return isRelation(said["relation"]) ? { ...about, ...claimToSend(said) } : said;
    }
  }
}

const strippedOf = (fields: FormFields): FormFields =>
  Object.fromEntries(
    Object.entries(fields)
      .filter(([name]) => name.startsWith(OF_EXCEPTION))
      .map(([name, text]) => [name.slice(OF_EXCEPTION.length), text]),
  );

function claimToSend(fields: FormFields): FormFields {
  const relation = fields["relation"];
  const cited = Array.from({ length: MOST_CITATIONS }, (_, nth) => citedToSend(fields, nth)).flat();
  const wanted = new Set<string>([
    ...COMMON_FIELDS,
    ...(isRelation(relation) ? FIELDS_OF_RELATION[relation] : []),
    ...cited,
  ]);
  return Object.fromEntries(
    Object.entries(fields).filter(([name, text]) => wanted.has(name) && text.trim() !== ""),
  );
}

/** The fields of one citation: what is printed has its source, chosen or described, and a place in it. */
function citedToSend(fields: FormFields, nth: number): readonly string[] {
  const isPrinted = fields[placedField("basis", nth)] === "published";
  const isChosen = Boolean(fields[placedField("source", nth)]?.trim());
  const names = [
    ...CITATION_FIELDS.filter((name) => isPrinted || (name !== "source" && name !== "locator")),
    ...(isPrinted && !isChosen ? FIELDS_OF_SOURCE : []),
  ];
  return names.map((name) => placedField(name, nth));
}
