import { citeSource } from "./cite-source.ts";
import { id } from "./ids.ts";
import type { CslItem, CslName, Source, SourceKind } from "./source.ts";

/** Longest text that is read as a list of items. */
export const MOST_LETTERS_OF_CSL = 1_000_000;

/** One item of a list, as it would become a source. */
export interface ReadItem {
  /** Place in the list, from 1. */
  readonly at: number;
  /** The citation as we would print it; what it can be called by if it is refused. */
  readonly text: string;
  readonly csl?: CslItem;
  /** None where a person has to choose. */
  readonly kind?: SourceKind;
  /** Why it would be refused and what to do, one sentence each; empty if it would be taken. */
  readonly refusals: readonly string[];
}

/** What items are compared with: a source is there already if one of these is the same. */
export interface KnownItem {
  readonly id: string;
  readonly DOI?: unknown;
  readonly URL?: unknown;
}

/** Kinds of source by type of CSL-JSON, which is also the list of types that are read; null where a person chooses. */
const KINDS: Readonly<Record<string, SourceKind | null>> = {
  ...{
    book: "book",
    chapter: "book",
    entry: "book",
    "entry-dictionary": "book",
    "entry-encyclopedia": "book",
  },
  ...{ article: "article", "article-journal": "article", "article-magazine": "article" },
  ...{
    "article-newspaper": "article",
    review: "article",
    "review-book": "article",
    "paper-conference": "article",
  },
  ...{ thesis: "thesis", patent: "patent", standard: "standard" },
  ...{ legislation: "statute", bill: "statute", regulation: "statute" },
  ...{ webpage: "web page", post: "web page", "post-weblog": "web page" },
  ...{ collection: null, document: null, pamphlet: null, report: null, manuscript: null, speech: null },
  ...{
    personal_communication: null,
    periodical: null,
    dataset: null,
    figure: null,
    graphic: null,
    map: null,
  },
};

/**
 * Reads a text as CSL-JSON, one item or a list, and says of each item what would become of it. A text that is no such
 * list is refused as a whole: the sentence says what to do.
 */
export function readCsl(text: string, known: readonly KnownItem[]): readonly ReadItem[] | string {
  if (text.length > MOST_LETTERS_OF_CSL)
    return `This is longer than ${MOST_LETTERS_OF_CSL.toLocaleString("en")} letters; paste it in parts.`;
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return "This is not JSON; export the list as CSL-JSON and paste the whole of it, brackets included.";
  }
  const list = Array.isArray(json) ? json : [json];
  if (list.length === 0) return "The list is empty; put at least one item in it.";
  const met = new Set<string>();
  return list.map((item: unknown, index) => readItem(item, index + 1, known, met));
}

function readItem(item: unknown, at: number, known: readonly KnownItem[], met: Set<string>): ReadItem {
  if (typeof item !== "object" || item === null || Array.isArray(item))
    return { at, text: `item ${at}`, refusals: ["It is not an item; write an object with type and title."] };
  const { type, title, author, editor, issued, id: own } = item as Partial<Record<string, unknown>>;
  const key = typeof own === "string" || typeof own === "number" ? `${own}` : "";
  const refusals = [
    ...(typeof type === "string" && Object.hasOwn(KINDS, type) ? [] : [wrongType(type)]),
    ...(typeof title === "string" && title.trim() !== "" ? [] : ["It has no title; give it one."]),
    ...namesRefused("author", author),
    ...namesRefused("editor", editor),
    ...(isDate(issued)
      ? []
      : ['Its date cannot be read; write issued as {"date-parts": [[1923]]} or {"raw": "1923"}.']),
    ...textsRefused(item as CslItem),
    ...(key === "" ? ["It has no id; give it one that no other item of the list has."] : []),
    ...(key !== "" && met.has(key)
      ? [`The id ${key} stands twice in the list; give one of them another.`]
      : []),
    ...sameAs(item as CslItem, known),
  ];
  met.add(key);
  if (refusals.length > 0)
    return {
      at,
      text: typeof title === "string" && title.trim() !== "" ? title : key || `item ${at}`,
      refusals,
    };
  const csl = { ...withTexts(item as CslItem), id: key };
  const kind = KINDS[csl.type];
  const source: Source = { id: id(key), kind: kind ?? "book", csl, reading: "known" };
  return { at, text: citeSource(source), csl, ...(kind ? { kind } : {}), refusals };
}

/** Fields that we print, which CSL-JSON also lets be numbers. */
const TEXTS = [
  ...["publisher", "publisher-place", "container-title", "volume", "issue", "page", "number"],
  ...["edition", "jurisdiction", "URL", "DOI", "note"],
];

const textsRefused = (item: CslItem): readonly string[] =>
  TEXTS.filter((field) => !["undefined", "string", "number"].includes(typeof item[field])).map(
    (field) => `Its ${field} is not a text; write it as one.`,
  );

/** The item with texts where it has numbers, in its dates the other way round. */
function withTexts(item: CslItem): CslItem {
  const texts = TEXTS.filter((field) => typeof item[field] === "number").map((field) => [
    field,
    `${item[field]}`,
  ]);
  const parts = item.issued?.["date-parts"]?.map((date) => date.map(Number));
  const issued = parts === undefined ? {} : { issued: { ...item.issued, "date-parts": parts } };
  return { ...item, ...Object.fromEntries(texts), ...issued };
}

const wrongType = (type: unknown): string =>
  typeof type === "string"
    ? `Its type ${type} is not read here; choose the nearest of those of CSL-JSON, such as book, article-journal or webpage.`
    : "It has no type; give it one, such as book, article-journal or webpage.";

function namesRefused(role: string, names: unknown): readonly string[] {
  const isName = (name: unknown): boolean => {
    if (typeof name !== "object" || name === null) return false;
    const parts = [(name as CslName).literal, (name as CslName).family, (name as CslName).given];
    const said = parts.filter((part) => part !== undefined);
    return said.length > 0 && said.every((part) => typeof part === "string");
  };
  return names === undefined || (Array.isArray(names) && names.every(isName))
    ? []
    : [`Its ${role} cannot be read; write a list of {"family", "given"} or {"literal"}.`];
}

/** Left out, a text as it stands, or years with months and days. */
function isDate(issued: unknown): boolean {
  if (issued === undefined) return true;
  if (typeof issued !== "object" || issued === null) return false;
  const { raw, "date-parts": parts } = issued as { raw?: unknown; "date-parts"?: unknown };
  if (parts === undefined) return typeof raw === "string";
  const isPart = (part: unknown): boolean => /^\d{1,4}$/.test(String(part));
  return (
    (raw === undefined || typeof raw === "string") &&
    Array.isArray(parts) &&
    parts.every((date) => Array.isArray(date) && date.length > 0 && date.every(isPart))
  );
}

const isSame = (a: unknown, b: unknown): boolean =>
  typeof a === "string" && typeof b === "string" && a.toLowerCase() === b.toLowerCase();

function sameAs(item: CslItem, known: readonly KnownItem[]): readonly string[] {
  const same = known.find(
    (other) =>
      other.id === item.id ||
      other.id === `source.${item.id}` ||
      isSame(other.DOI, item["DOI"]) ||
      isSame(other.URL, item.URL),
  );
  return same ? [`It is there already, as ${same.id}; cite that one.`] : [];
}
