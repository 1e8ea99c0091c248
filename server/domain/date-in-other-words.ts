const CENTURIES = ["sixteenth", "seventeenth", "eighteenth", "nineteenth", "twentieth"];
const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

/**
 * The EDTF of one date written in words or in an older spelling, in lower case: "c. 1750", "1750s", "18th century",
 * `175u`, `17--`, "12 May 1750". `undefined` where no such reading is known; the answer is not checked.
 */
export function dateInOtherWords(words: string): string | undefined {
  const text = words.replace(/^(?:in |the |a\.?d\.? )+/, "").replace(/ (?:ce|a\.?d\.?)$/, "");
  return marked(text) ?? century(text) ?? decade(text) ?? dayInWords(text) ?? digits(text);
}

function marked(text: string): string | undefined {
  const about = /^(?:circa|ca\.?|c\.?|about|around|approximately|approx\.?|near) ?(.+)$/.exec(text)?.[1];
  if (about !== undefined) return withMark(dateInOtherWords(about), "~");
  const perhaps = /^(?:perhaps|probably|possibly|maybe|prob\.?|poss\.?) (.+)$/.exec(text)?.[1];
  if (perhaps !== undefined) return withMark(dateInOtherWords(perhaps), "?");
  const doubled = /^(.+[^?~%])([?~%])([?~%])$/.exec(text);
  return doubled
    ? withMark(withMark(dateInOtherWords(doubled[1] as string), doubled[2] as string), doubled[3] as string)
    : undefined;
}

function century(text: string): string | undefined {
  const found = /^(\d{1,2})(?:st|nd|rd|th)[ -]?(?:century|cent\.?|c\.?)$/.exec(text)?.[1];
  const named = CENTURIES.indexOf(/^([a-z]+)[ -]century$/.exec(text)?.[1] ?? "");
  const number = found !== undefined ? Number(found) : named >= 0 ? named + 16 : 0;
  return number > 0 ? `${String(number - 1).padStart(2, "0")}XX` : undefined;
}

function decade(text: string): string | undefined {
  const found = /^(\d{3})0[’']?s([?~%]?)$/.exec(text);
  if (!found) return undefined;
  const [, start, mark] = found as unknown as [string, string, string];
  return `${start.endsWith("0") ? `${start.slice(0, 2)}XX` : `${start}X`}${mark}`;
}

function dayInWords(text: string): string | undefined {
  const found = /^(?:(\d{1,2}) )?([a-z]{3})[a-z]*\.? (\d{4})$/.exec(text);
  const month = MONTHS.indexOf(found?.[2] ?? "") + 1;
  if (!found || month === 0) return undefined;
  const two = (n: number): string => String(n).padStart(2, "0");
  return `${found[3]}-${two(month)}${found[1] === undefined ? "" : `-${two(Number(found[1]))}`}`;
}

function digits(text: string): string | undefined {
  const day = /^(\d{4}(?:-\d{2}){0,2})t[\d:]/.exec(text)?.[1];
  if (day !== undefined) return day;
  const seasonOf = /^([\dx]{4})-2[1-4]$/.exec(text)?.[1];
  if (seasonOf !== undefined) return seasonOf.toUpperCase();
  if (/^[\dx]{4}s\d$/.test(text)) return text.toUpperCase();
  const short = /^y?(\d{2,4})([ux*_-]{0,2})([?~%]?)$/.exec(text);
  if (short && `${short[1]}${short[2]}`.length <= 4)
    return `${(short[1] as string).padEnd(4, "X")}${short[3]}`;
  if (/^[?~%]?[\dux]{4}(?:-|[?~%]?$)/.test(text)) return text.replace(/[ux]/g, "X");
  return undefined;
}

function withMark(date: string | undefined, mark: string): string | undefined {
  if (date === undefined) return undefined;
  const marks = new Set([...(/[?~%]+$/.exec(date)?.[0] ?? ""), mark]);
  const both = marks.has("%") || marks.size > 1;
  return date.replace(/[?~%]+$/, "") + (both ? "%" : mark);
}
