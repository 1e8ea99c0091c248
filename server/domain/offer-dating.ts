import type { Role } from "./dating.ts";

/** Canonical form of what was probably meant by an unreadable date, if one of the guesses can be read. */
export function offerDating(
  text: string,
  isReadable: (offer: string) => boolean,
  role: Role,
): string | undefined {
  if (text.length > 100) return undefined;
  return guesses(tidy(text), role).find((guess) => guess !== text && isReadable(guess));
}

function tidy(text: string): string {
  return text
    .trim()
    .replace(/\s+/g, " ")
    .replace(/[–—‐‑−]/g, "-");
}

const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

function* guessesOf(text: string, role: Role): Generator<string> {
  yield text;
  yield text.replaceAll(" ", "");
  const plain = text.toLowerCase();
  const span =
    /^(?:from |between )?(.+?) ?(?:-|\/| to | and | until |\bto\b)+ ?(\S.*)$/.exec(plain) ??
    /^(\d{4})-(\d{1,4})$/.exec(plain);
  void MONTHS;
  if (span) {
    const from = dateFrom(span[1] as string);
    const to = from && dateFrom(fill(span[1] as string, span[2] as string));
    if (from && to) yield* [`${from}/${sameMark(from, to, plain)}`, `${to}/${from}`];
  }
  yield* openEnds(plain, role);
  const one = dateFrom(plain);
  if (one) yield one;
  yield* listsAsSpans(text);
}

const guesses = (text: string, role: Role): readonly string[] => [...guessesOf(text, role)];

/** `1760-80` and `1750/1` leave out what the two years share. */
function fill(from: string, to: string): string {
  const year = /\d{4}/.exec(from)?.[0];
  const short = /^\d{1,3}(?!\d)/.exec(to)?.[0];
  return year && short ? year.slice(0, 4 - short.length) + to : to;
}

const sameMark = (from: string, to: string, plain: string): string =>
  /^(c\.?|ca\.?|circa|about|around) ?\d/.test(plain) && from.endsWith("~") && /^\d{4}$/.test(to)
    ? `${to}~`
    : to;

function* openEnds(plain: string, role: Role): Generator<string> {
  const before = /^(?:before|until|up to|by|-|\.\.|open\/) ?(.+)$/.exec(plain)?.[1];
  const after =
    /^(?:after|from|since) (.+)$/.exec(plain)?.[1] ??
    /^(.+?) ?(?:-|\.\.|\/open|onwards?|or later)$/.exec(plain)?.[1];
  const [last, first] = [before && dateFrom(before), after && dateFrom(after)];
  if (last) yield role === "event" ? `[..${last}]` : `../${last}`;
  if (first) yield role === "event" ? `[${first}..]` : `${first}/..`;
}

/** One date in the words and older spellings people use. */
function dateFrom(plain: string): string | undefined {
  const about = /^(?:c\.?|ca\.?|circa|about|around|approx\.?|approximately) ?(.+)$/.exec(plain)?.[1];
  if (about) return marked(dateFrom(about), "~");
  const perhaps = /^(?:perhaps|probably|possibly|maybe) (.+)$/.exec(plain)?.[1];
  if (perhaps) return marked(dateFrom(perhaps), "?");
  const century = /^(?:the )?(\d{1,2})(?:st|nd|rd|th) ?(?:century|cent\.?|c\.?)$/.exec(plain)?.[1];
  if (century) return `${String(Number(century) - 1).padStart(2, "0")}XX`;
  const text = plain.replace(/^the /, "").replace(/^y(?=\d{4}$)/, "");
  if (/^\d{2}00'?s$/.test(text)) return `${text.slice(0, 2)}XX`;
  if (/^\d{3}0'?s$/.test(text)) return `${text.slice(0, 3)}X`;
  const stem = /^([\dux*_-]{2,4})([?~%]{0,2})$/.exec(text);
  if (stem) return marked((stem[1] as string).replace(/[^\d]/g, "X").padEnd(4, "X"), stem[2] ?? "");
  const day = /^(\d{4}-\d{2}-\d{2})t/.exec(text)?.[1];
  if (day) return day;
  if (/^\d{4}s\d$/.test(text)) return text.toUpperCase();
  return /^[?~%]?[\dx]{4}/.test(text) ? text.replaceAll("x", "X") : undefined;
}

function marked(date: string | undefined, mark: string): string | undefined {
  if (date === undefined || mark === "") return date;
  const marks = (/[?~%]$/.exec(date)?.[0] ?? "") + mark;
  const both = marks.includes("%") || (marks.includes("~") && marks.includes("?"));
  return date.replace(/[?~%]$/, "") + (both ? "%" : marks[0]);
}

function* listsAsSpans(text: string): Generator<string> {
  const years = text.match(/\d{4}/g)?.sort();
  if (!years || !/^[[{]/.test(text)) return;
  const [first, last] = [years[0] as string, years.at(-1) as string];
  if (text.includes("..")) yield first === last ? first : `[${first}..${last}]`;
  yield `${first}/${last}`;
}
