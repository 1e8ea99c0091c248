import type { CslItem, CslName } from "./source.ts";

/** Entry types of BibTeX by type of CSL-JSON; what is not here is `misc`. */
const ENTRY_TYPES: Readonly<Record<string, string>> = {
  book: "book",
  chapter: "incollection",
  entry: "incollection",
  "entry-dictionary": "incollection",
  "entry-encyclopedia": "incollection",
  "article-journal": "article",
  "article-magazine": "article",
  "article-newspaper": "article",
  review: "article",
  thesis: "phdthesis",
  report: "techreport",
  "paper-conference": "inproceedings",
};

/** A list of sources as BibTeX (UTF-8), in the order given. An item is known by its id without `source.`. */
export const printBibtex = (items: readonly CslItem[]): string => items.map(printEntry).join("\n");

function printEntry(csl: CslItem): string {
  const type = ENTRY_TYPES[csl.type] ?? "misc";
  const fields: readonly (readonly [string, string | undefined])[] = [
    ["title", bracedText(csl.title)],
    ["author", names(csl.author)],
    ["editor", names(csl.editor)],
    [type === "article" ? "journal" : "booktitle", text(csl["container-title"])],
    ["year", yearOf(csl)],
    ["month", monthOf(csl)],
    ["volume", text(csl.volume)],
    ["number", text(csl.issue ?? csl.number)],
    ["pages", text(csl.page)?.replaceAll(/\s*[-–]+\s*/g, "--")],
    [
      type === "techreport" ? "institution" : type === "phdthesis" ? "school" : "publisher",
      text(csl.publisher),
    ],
    ["address", text(csl["publisher-place"])],
    ["edition", text(csl["edition"])],
    ["howpublished", type === "misc" ? howPublished(csl) : undefined],
    ["doi", text(csl["DOI"])],
    ["url", urlOf(csl)],
    ["note", text(csl.note)],
  ];
  const lines = fields.flatMap(([name, value]) => (value === undefined ? [] : [`  ${name} = {${value}},\n`]));
  return `@${type}{${csl.id.replace(/^source\./, "")},\n${lines.join("")}}\n`;
}

/** Signs that mean something to TeX. */
const SIGNS: Readonly<Record<string, string>> = {
  "\\": "\\textbackslash{}",
  "{": "\\{",
  "}": "\\}",
  "~": "\\textasciitilde{}",
  "^": "\\textasciicircum{}",
};
const escaped = (words: string): string =>
  words.replaceAll(/[\\{}~^]|[$&%#_]/g, (sign) => SIGNS[sign] ?? `\\${sign}`);

const text = (value: unknown): string | undefined =>
  typeof value === "string" || typeof value === "number" ? escaped(`${value}`) : undefined;
/** In braces of its own, so that no style changes its capitals. */
const bracedText = (value: unknown): string | undefined => {
  const words = text(value);
  return words === undefined ? undefined : `{${words}}`;
};

function names(list: readonly CslName[] | undefined): string | undefined {
  if (!list?.length) return undefined;
  return list
    .map(({ literal, family, given }) =>
      literal === undefined && family !== undefined && given !== undefined
        ? `${escaped(family)}, ${escaped(given)}`
        : `{${escaped(literal ?? family ?? given ?? "")}}`,
    )
    .join(" and ");
}

function yearOf({ issued }: CslItem): string | undefined {
  const years = (issued?.["date-parts"] ?? []).flatMap(([year]) => year ?? []);
  return years.length > 0 ? [...new Set(years)].join("--") : text(issued?.raw);
}

function monthOf({ issued }: CslItem): string | undefined {
  const parts = issued?.["date-parts"] ?? [];
  const month = parts.length === 1 ? parts[0]?.[1] : undefined;
  return month === undefined ? undefined : `${month}`;
}

const howPublished = ({ type, jurisdiction }: CslItem): string | undefined =>
  text([jurisdiction, type.replaceAll(/[-_]/g, " ")].filter((word) => typeof word === "string").join(" "));

/** Addresses stand as they are, but for braces, which would end the field. */
const urlOf = ({ URL: url }: CslItem): string | undefined =>
  url?.replaceAll("{", "%7B").replaceAll("}", "%7D");
