import type { CslItem, CslName } from "../source.ts";
import { CSL_TYPES } from "./entry-types.ts";

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
  pamphlet: "booklet",
  manuscript: "unpublished",
};
const PUBLISHERS: Readonly<Record<string, string>> = {
  techreport: "institution",
  phdthesis: "school",
};

/**
 * A list of sources as BibTeX (UTF-8), in the order given. An item is known by its id without `source.`. What the
 * standard styles know stands in their fields; what they do not (`csltype`, `jurisdiction`, the day in `date`) stands in
 * fields that BibTeX leaves alone, so that our own reader gives back the same item.
 */
export const printBibtex = (items: readonly CslItem[]): string => items.map(printEntry).join("\n");

function printEntry(csl: CslItem): string {
  const type = ENTRY_TYPES[csl.type] ?? "misc";
  const fields: readonly (readonly [string, string | undefined])[] = [
    ["title", bracedText(csl.title)],
    ["author", names(csl.author)],
    ["editor", names(csl.editor)],
    ["translator", names(csl["translator"])],
    [type === "article" ? "journal" : "booktitle", text(csl["container-title"])],
    ["series", text(csl["collection-title"])],
    ["year", yearOf(csl)],
    ["month", monthOf(csl)],
    ["date", dayOf(csl)],
    ["volume", text(csl.volume)],
    ...numbers(csl, type),
    ["chapter", text(csl["chapter-number"])],
    ["pages", text(csl.page)?.replaceAll(/\s*[-–]+\s*/g, "--")],
    [PUBLISHERS[type] ?? "publisher", text(csl.publisher)],
    ["address", text(csl["publisher-place"])],
    ["edition", text(csl["edition"])],
    // Without it the standard styles would call every thesis a doctor's.
    ["type", text(csl["genre"]) ?? (type === "phdthesis" ? "thesis" : undefined)],
    ["howpublished", type === "misc" ? howPublished(csl) : undefined],
    ["jurisdiction", text(csl["jurisdiction"])],
    ["isbn", text(csl["ISBN"])],
    ["issn", text(csl["ISSN"])],
    ["language", text(csl["language"])],
    ["doi", text(csl["DOI"])],
    ["url", urlOf(csl)],
    ["urldate", isoDay(csl["accessed"])],
    ["note", text(csl.note)],
    ["abstract", text(csl["abstract"])],
    ["csltype", CSL_TYPES[type] === csl.type ? undefined : text(csl.type)],
  ];
  const lines = fields.flatMap(([name, value]) => (value === undefined ? [] : [`  ${name} = {${value}},\n`]));
  return `@${type}{${csl.id.replace(/^source\./, "")},\n${lines.join("")}}\n`;
}

/** BibTeX has one field for the number of an issue, in a series, and of the thing itself; of an article that is `eid`. */
function numbers(csl: CslItem, type: string): readonly (readonly [string, string | undefined])[] {
  if (type === "article")
    return [
      ["number", text(csl.issue)],
      ["eid", text(csl.number)],
    ];
  return [
    ["issue", text(csl.issue)],
    ["number", text(csl.number ?? csl["collection-number"])],
  ];
}

/** Signs that mean something to TeX. Braces are spelt, since BibTeX counts them whatever stands before them. */
const SIGNS: Readonly<Record<string, string>> = {
  "\\": "\\textbackslash{}",
  "{": "\\textbraceleft{}",
  "}": "\\textbraceright{}",
  "~": "\\textasciitilde{}",
  "^": "\\textasciicircum{}",
  "`": "\\textasciigrave{}",
};
const escaped = (words: string): string =>
  words
    .replaceAll(/[\\{}~^`]|[$&%#_]/g, (sign) => SIGNS[sign] ?? `\\${sign}`)
    // Signs that TeX would join.
    .replaceAll(/-(?=-)|'(?=')/g, "$&{}");

const text = (value: unknown): string | undefined =>
  typeof value === "string" || typeof value === "number" ? escaped(`${value}`) : undefined;
/** In braces of its own, so that no style changes its capitals. */
const bracedText = (value: unknown): string | undefined => {
  const words = text(value);
  return words === undefined ? undefined : `{${words}}`;
};

const names = (list: unknown): string | undefined =>
  Array.isArray(list) && list.length > 0 ? (list as readonly CslName[]).map(nameOf).join(" and ") : undefined;

function nameOf({ literal, family, given, suffix, ...particles }: CslName): string {
  const particle = [particles["dropping-particle"], particles["non-dropping-particle"]]
    .filter((word) => word !== undefined)
    .map(escaped)
    .join(" ");
  if (literal !== undefined || family === undefined) return `{${escaped(literal ?? given ?? "")}}`;
  const last = [particle, oneWord(family)].filter((word) => word !== "").join(" ");
  if (given === undefined && suffix === undefined)
    return particle === "" && /\s/.test(family) ? `{${escaped(family)}}` : last;
  return [last, ...(suffix === undefined ? [] : [oneWord(suffix)]), guarded(given ?? "")].join(", ");
}

/** A family name in braces where its parts would be taken for something else. */
const oneWord = (name: string): string =>
  /^\p{Ll}|\s\p{Ll}/u.test(name) ? `{${escaped(name)}}` : guarded(name);
const guarded = (name: string): string =>
  /,|(?:^|\s)and(?:\s|$)/i.test(name) ? `{${escaped(name)}}` : escaped(name);

function yearOf({ issued }: CslItem): string | undefined {
  const years = (issued?.["date-parts"] ?? []).flatMap(([year]) => year ?? []);
  return years.length > 0 ? [...new Set(years)].join("--") : text(issued?.raw);
}

function monthOf({ issued }: CslItem): string | undefined {
  const parts = issued?.["date-parts"] ?? [];
  const month = parts.length === 1 ? parts[0]?.[1] : undefined;
  return month === undefined ? undefined : `${month}`;
}

/** The whole date where it says more than a month does. */
function dayOf({ issued }: CslItem): string | undefined {
  const parts = issued?.["date-parts"] ?? [];
  const says = parts.length === 1 ? parts[0]?.length === 3 : parts.some((date) => date.length > 1);
  return says ? isoDay(issued) : undefined;
}

function isoDay(date: unknown): string | undefined {
  const { "date-parts": parts = [] } = (date ?? {}) as { "date-parts"?: readonly (readonly number[])[] };
  if (parts.length === 0) return undefined;
  return parts
    .map((each) => each.map((part, index) => `${part}`.padStart(index === 0 ? 4 : 2, "0")).join("-"))
    .join("/");
}

/** Names of types that are no words to be printed. */
const TYPE_WORDS: Readonly<Record<string, string>> = {
  webpage: "web page",
  post: "web post",
  "post-weblog": "weblog post",
};

/** A few words as they open a sentence: the standard styles print them behind a full stop. */
function howPublished({ type, jurisdiction }: CslItem): string | undefined {
  const what = TYPE_WORDS[type] ?? type.replaceAll(/[-_]/g, " ");
  const words = [jurisdiction, what].filter((word) => typeof word === "string").join(" ");
  return text(words.charAt(0).toUpperCase() + words.slice(1));
}

/** Addresses stand as they are, but for braces, which would end the field. */
const urlOf = ({ URL: url }: CslItem): string | undefined =>
  url?.replaceAll("{", "%7B").replaceAll("}", "%7D");
