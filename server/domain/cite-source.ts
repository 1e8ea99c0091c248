import type { CslItem, CslName, Source } from "./source.ts";

/** Types of CSL-JSON whose title stands in quotation marks: parts of something else, and what was never published. */
const QUOTED = new Set([
  ...["article", "article-journal", "article-magazine", "article-newspaper", "review", "review-book"],
  ...[
    "chapter",
    "entry",
    "entry-dictionary",
    "entry-encyclopedia",
    "paper-conference",
    "post",
    "post-weblog",
  ],
  ...["webpage", "thesis", "manuscript", "speech", "personal_communication"],
]);
/** Of those, what stands in a book; what stands in a periodical or on a site has no "in". */
const IN_BOOKS = new Set(["chapter", "entry", "entry-dictionary", "entry-encyclopedia", "paper-conference"]);
/** What is found by its day, not by its year alone. */
const DATED_BY_DAY = new Set([
  ...["article-magazine", "article-newspaper", "post", "post-weblog", "webpage", "patent"],
  ...["personal_communication", "legislation", "speech", "report"],
]);
const MONTHS = [
  ...["January", "February", "March", "April", "May", "June", "July", "August", "September"],
  ...["October", "November", "December"],
];

/**
 * A source as one line of text in one fixed form, that of The Chicago Manual of Style's notes in its order of names,
 * title, what it stands in, number, place, publisher and date, with commas throughout. What is not known is left out,
 * the year as "undated". Plain text, no full stop at the end, no address.
 */
export function citeSource(source: Source): string {
  const { csl } = source;
  const names = namesInWords(csl.author ?? []) || editorsInWords(csl.editor ?? []);
  return [
    names,
    titleOf(csl),
    containerOf(csl),
    translatorsOf(csl),
    editionOf(csl["edition"]),
    seriesOf(csl),
    numberOf(csl),
    pagesOf(csl),
    csl.type === "thesis" && typeof csl["genre"] === "string" ? csl["genre"] : "",
    imprintOf(csl),
    dateOf(csl),
  ]
    .filter((piece) => piece !== "")
    .join(", ");
}

/** Up to three names in full; of more, the first "and others". */
function namesInWords(names: readonly CslName[]): string {
  const words = names.map(nameInWords);
  if (words.length > 3) return `${words[0]} and others`;
  return words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

const nameInWords = ({ literal, given, family, suffix, ...particles }: CslName): string =>
  literal ??
  [given, particles["dropping-particle"], particles["non-dropping-particle"], family, suffix]
    .filter(Boolean)
    .join(" ");

const editorsInWords = (names: readonly CslName[]): string =>
  names.length === 0 ? "" : `${namesInWords(names)} (${names.length === 1 ? "ed." : "eds"})`;

const translatorsOf = ({ translator }: CslItem): string =>
  Array.isArray(translator) && translator.length > 0 ? `trans. ${namesInWords(translator)}` : "";

function titleOf({ title, type, id }: CslItem): string {
  if (title === undefined) return id;
  return QUOTED.has(type) ? `“${withInnerQuotes(title)}”` : title;
}

/** Quotation marks inside of others are single. */
const withInnerQuotes = (title: string): string =>
  title.replaceAll(
    /“([^“”]*)”|"([^"]*)"/g,
    (_, curly?: string, straight?: string) => `‘${curly ?? straight}’`,
  );

function containerOf(csl: CslItem): string {
  const container = csl["container-title"];
  const editors = csl.author?.length ? editorsInWords(csl.editor ?? []) : "";
  const volume = [csl.volume, csl.issue && `no. ${csl.issue}`].filter(Boolean).join(", ");
  if (container === undefined) return [editors, volume && `vol. ${volume}`].filter(Boolean).join(", ");
  const book = [editors, container].filter(Boolean).join(", ");
  return `${IN_BOOKS.has(csl.type) || editors ? "in " : ""}${book} ${volume}`.trimEnd();
}

/** "3" as "3rd ed."; words as they stand, "ed." behind an ordinal. */
function editionOf(edition: unknown): string {
  if (typeof edition !== "string" && typeof edition !== "number") return "";
  const words = `${edition}`.trim();
  if (/^\d+$/.test(words)) return `${words}${ordinalEnd(Number(words))} ed.`;
  return /\bed(?:\.|n|ition)/i.test(words) ? words : `${words} ed.`;
}

function ordinalEnd(number: number): string {
  if (number % 100 >= 11 && number % 100 <= 13) return "th";
  return ["th", "st", "nd", "rd"][number % 10] ?? "th";
}

const seriesOf = (csl: CslItem): string =>
  typeof csl["collection-title"] === "string"
    ? [csl["collection-title"], csl["collection-number"]].filter(Boolean).join(" ")
    : "";

function numberOf({ type, title = "", number, jurisdiction }: CslItem): string {
  const where = typeof jurisdiction === "string" ? jurisdiction : "";
  if (type === "patent") return [where, "patent", number].filter(Boolean).join(" ");
  if (number === undefined || saysWord(title, number)) return where;
  // A chapter of a statute and a number with words in it say themselves what they are.
  const isBare = type === "legislation" ? /^\d+$/.test(number) : !/\p{Ll}/u.test(number);
  return [where, isBare ? `no. ${number}` : number].filter(Boolean).join(", ");
}

/** Whether a title says a number already; short ones could be anything. */
const saysWord = (title: string, number: string): boolean =>
  number.length > 2 && ` ${title.replaceAll(/[^\p{L}\p{N}./–-]+/gu, " ")} `.includes(` ${number} `);

/** Pages of what stands in something else. Of a whole work a page is the place of a citation, and stands there. */
const pagesOf = ({ page, type }: CslItem): string =>
  page === undefined || !QUOTED.has(type) || type === "thesis"
    ? ""
    : `${/[-–,;]/.test(page) ? "pp." : "p."} ${page.replaceAll("-", "–")}`;

const imprintOf = (csl: CslItem): string =>
  [csl["publisher-place"], csl.publisher].filter(Boolean).join(": ");

function dateOf({ issued, type, title = "" }: CslItem): string {
  const dates = issued?.["date-parts"] ?? [];
  const years = dates.flatMap(([year]) => year ?? []);
  if (years.length === 0) return issued?.raw ?? "undated";
  const [year, month = 0, day] = dates[0] ?? [];
  const named = MONTHS[month - 1];
  if (dates.length > 1 || named === undefined || !DATED_BY_DAY.has(type))
    return [...new Set(years)].join("–");
  const words = [day, named, year].filter((part) => part !== undefined).join(" ");
  return title.includes(words) ? `${year}` : words;
}
