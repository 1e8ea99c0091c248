import type { CslItem, CslName, Source } from "./source.ts";

/** Types of CSL-JSON that stand inside something else, and so have their title in quotation marks. */
const CONTAINED = new Set([
  "article",
  "article-journal",
  "article-magazine",
  "article-newspaper",
  "chapter",
  "entry",
  "entry-dictionary",
  "entry-encyclopedia",
  "paper-conference",
  "post",
  "post-weblog",
  "webpage",
]);

/**
 * A source as one line of text in one fixed form: authors, title, what it stands in, number or pages, place and
 * publisher, year. What is not known is left out, the year as "undated". Plain text, no full stop at the end.
 */
export function citeSource(source: Source): string {
  const { csl } = source;
  const names = namesInWords(csl.author ?? []) || editorsInWords(csl.editor ?? []);
  return [names, titleOf(csl), containerOf(csl), numberOf(csl), pagesOf(csl), imprintOf(csl), yearOf(csl)]
    .filter((piece) => piece !== "")
    .join(", ");
}

/** Up to three names in full; of more, the first "and others". */
function namesInWords(names: readonly CslName[]): string {
  const words = names.map(
    ({ literal, given, family }) => literal ?? [given, family].filter(Boolean).join(" "),
  );
  if (words.length > 3) return `${words[0]} and others`;
  return words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

const editorsInWords = (names: readonly CslName[]): string =>
  names.length === 0 ? "" : `${namesInWords(names)} (ed.)`;

function titleOf({ title, type, id }: CslItem): string {
  if (title === undefined) return id;
  return CONTAINED.has(type) ? `“${title}”` : title;
}

function containerOf(csl: CslItem): string {
  const container = csl["container-title"];
  const editors = csl.author?.length ? editorsInWords(csl.editor ?? []) : "";
  const volume = [csl.volume, csl.issue && `no. ${csl.issue}`].filter(Boolean).join(", ");
  if (container === undefined) return [editors, volume && `vol. ${volume}`].filter(Boolean).join(", ");
  return [editors ? `in ${editors}, ${container}` : `in ${container}`, volume].filter(Boolean).join(" ");
}

function numberOf({ type, number, jurisdiction }: CslItem): string {
  const where = typeof jurisdiction === "string" ? jurisdiction : "";
  if (type === "patent") return [where, "patent", number].filter(Boolean).join(" ");
  return [where, number && `no. ${number}`].filter(Boolean).join(", ");
}

const pagesOf = ({ page }: CslItem): string =>
  page === undefined ? "" : `${/[-–,]/.test(page) ? "pp." : "p."} ${page.replaceAll("-", "–")}`;

const imprintOf = (csl: CslItem): string =>
  [csl["publisher-place"], csl.publisher].filter(Boolean).join(": ");

function yearOf({ issued }: CslItem): string {
  const years = (issued?.["date-parts"] ?? []).flatMap(([year]) => year ?? []);
  return years.length > 0 ? [...new Set(years)].join("–") : (issued?.raw ?? "undated");
}
