import { canonicalJson } from "../../../domain/canonical-json.ts";
import { READING_IN_WORDS } from "../../../domain/reading-in-words.ts";
import type { CslItem, CslName, Source } from "../../../domain/source.ts";
import { each, type Facet, type FacetTable, one } from "./facets.ts";

/** What a source says, field by field; a field of its bibliographic item that has no word here is called as it is there. */
export const SOURCE_FACETS: FacetTable<Source> = {
  kind: (kind) => one("kind", kind),
  csl: (csl) => Object.entries(csl).flatMap(([field, value]) => itemFacets(field, value)),
  reading: (reading) => one("how far it was read", reading, READING_IN_WORDS[reading]),
  note: (note) => one("note", note),
  piece: ({ form, region, made, features }, { labelOf }) => [
    ...one("form of the piece", form, labelOf(form)),
    ...one("region of the piece", region, labelOf(region)),
    ...one("when the piece was made", made),
    ...each("what the piece shows", features, ({ feature, part }) => ({
      key: `${feature} ${part ?? ""}`,
      text: part === undefined ? labelOf(feature) : `${labelOf(feature)}, on a ${labelOf(part)}`,
    })),
  ],
};

const FIELDS: Readonly<Record<string, string>> = {
  type: "type of item",
  title: "title",
  author: "author",
  editor: "editor",
  issued: "year",
  publisher: "publisher",
  "publisher-place": "place",
  "container-title": "where it stands",
  volume: "volume",
  issue: "issue",
  page: "pages",
  number: "number",
  URL: "address",
  note: "note of the item",
};

function itemFacets(field: string, value: unknown): readonly Facet[] {
  if (field === "id" || value === undefined) return [];
  const what = FIELDS[field] ?? field;
  if (field === "author" || field === "editor")
    return each(what, value as readonly CslName[], ({ family, given, literal }) => ({
      key: literal ?? [given, family].filter((name) => name !== undefined).join(" "),
    }));
  if (field === "issued") return one(what, canonicalJson(value), dayInWords(value as IssuedOn));
  return one(what, typeof value === "string" ? value : canonicalJson(value));
}

type IssuedOn = NonNullable<CslItem["issued"]>;
const dayInWords = (issued: IssuedOn): string =>
  issued["date-parts"]?.map((parts) => parts.join("-")).join(" to ") ?? issued.raw ?? "undated";
