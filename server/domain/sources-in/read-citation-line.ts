import type { FormFields } from "../proposals/form/form-fields.ts";

/** Longest line that is looked at. */
const LONGEST = 2000;

/**
 * What can be read off a citation that was copied as one line: number, year, address, title and author, each only where it is
 * plain. For a person to look over; what is not plain is left out.
 */
export function readCitationLine(text: string): FormFields {
  const line = text.slice(0, LONGEST).replaceAll(/\s+/g, " ").trim();
  const isbn = isbnIn(line);
  const url = /https?:\/\/[^\s<>"]+[^\s<>".,;)]/.exec(line)?.[0];
  const doi = /\b10\.\d{4,9}\/[^\s<>"]+[^\s<>".,;)]/.exec(line)?.[0];
  const words = [url, doi].reduce((left: string, one) => (one ? left.replace(one, " ") : left), line);
  const plain = words.replace(/ISBN(?:-1[03])?:?\s*[\dXx -]{10,20}/i, " ");
  const year = [...plain.matchAll(/(?<!\d)(1[4-9]\d\d|20\d\d)(?!\d)/g)].at(-1)?.[1];
  const quoted = /[“"‘]([^”"’]{3,300})[”"’]/.exec(plain)?.[1];
  const [author, title] = quoted === undefined ? authorAndTitle(plain) : [beforeQuote(plain), quoted];
  return {
    ...(author ? { author } : {}),
    ...(title ? { title: title.replace(/[.,]$/, "").trim() } : {}),
    ...(year ? { year } : {}),
    ...(isbn ? { isbn } : {}),
    ...(doi ? { doi } : {}),
    ...(url && !url.includes("doi.org/") ? { url } : {}),
  };
}

/** A number of a book whose last figure proves it (ISO 2108). */
function isbnIn(line: string): string | undefined {
  for (const [found] of line.matchAll(/(?<![\d-])(?:97[89][- ]?)?(?:\d[- ]?){9}[\dXx](?![\d-])/g)) {
    const figures = found.replaceAll(/[- ]/g, "").toUpperCase();
    if (isIsbn(figures)) return figures;
  }
  return undefined;
}

/** Whether the last figure of a number of ten or thirteen figures follows from the others. */
export function isIsbn(figures: string): boolean {
  const values = [...figures].map((figure) => (figure === "X" ? 10 : Number(figure)));
  const weighed = values.map((value, i) =>
    values.length === 10 ? value * (10 - i) : value * (i % 2 === 0 ? 1 : 3),
  );
  const sum = weighed.reduce((a, b) => a + b, 0);
  return (
    (values.length === 10 && sum % 11 === 0) ||
    (values.length === 13 && sum % 10 === 0 && !figures.includes("X"))
  );
}

const beforeQuote = (line: string): string | undefined =>
  nameIn(line.slice(0, line.search(/[“"‘]/)).replace(/[,.:\s]+$/, ""));

/** "Alder, Ann. Saws of the north. London: …": the name ends with the first full stop behind a word of more than a letter. */
function authorAndTitle(line: string): readonly [string | undefined, string | undefined] {
  const [, first, rest] = /^(.{3,120}?[\p{L}]{2}\)?)\.\s+(.+)$/u.exec(line) ?? [];
  if (first === undefined || rest === undefined) return [undefined, undefined];
  const behindYear = rest.replace(/^\(?(?:1[4-9]|20)\d\d\)?[.,:]?\s*/, "");
  const title = /^(.{3,300}?)(?:\.\s|\.$|\s\(|,\s*(?:1[4-9]|20)\d\d|$)/.exec(behindYear)?.[1];
  const author = nameIn(first.replace(/\s*\(?(?:1[4-9]|20)\d\d\)?$/, ""));
  return author === undefined ? [undefined, first] : [author, title];
}

/** A name with the family name in front; the other way round it is turned. */
function nameIn(text: string): string | undefined {
  const name = text.trim();
  if (name === "" || name.length > 120 || /\d/.test(name)) return undefined;
  if (name.includes(",")) return name;
  const words = name.split(" ");
  if (words.length < 2 || words.length > 5) return undefined;
  return `${words.at(-1)}, ${words.slice(0, -1).join(" ")}`;
}
