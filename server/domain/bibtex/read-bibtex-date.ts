/** A date as CSL-JSON has it. */
export interface CslDate {
  readonly "date-parts"?: readonly (readonly number[])[];
  readonly raw?: string;
}

const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

/** What `jan` to `dec` stand for where no braces are, as in the standard styles. */
export const MONTH_NAMES: Readonly<Record<string, string>> = Object.fromEntries(
  MONTHS.map((month, index) => [month, `${index + 1}`]),
);

/**
 * `date` (ISO 8601, one day or a span), or else `year` with `month` and `day`. Years that are no plain year or span of
 * two stay as they are written. Undefined where there is neither.
 */
export function readBibtexDate(fields: {
  readonly date?: string | undefined;
  readonly year?: string | undefined;
  readonly month?: string | undefined;
  readonly day?: string | undefined;
}): CslDate | undefined {
  const { date, year, month, day } = fields;
  if (date !== undefined) return readSpan(date) ?? { raw: date };
  if (year === undefined) return undefined;
  const [, from, until] = /^(\d{4})(?:\s*(?:-{1,2}|[–/])\s*(\d{4}))?$/.exec(year) ?? [];
  if (from === undefined) return { raw: year };
  if (until !== undefined) return { "date-parts": [[Number(from)], [Number(until)]] };
  return { "date-parts": [[Number(from), ...monthAndDay(month ?? "", day)]] };
}

function readSpan(date: string): CslDate | undefined {
  const parts = date.split("/").map((part) => {
    const [, year, month, day] = /^(\d{4})(?:-(\d\d))?(?:-(\d\d))?$/.exec(part.trim()) ?? [];
    const numbers = [year, month, day].flatMap((number) => (number === undefined ? [] : [Number(number)]));
    return numbers.length > 0 && isInYear(numbers[1], numbers[2]) ? numbers : undefined;
  });
  return parts.length <= 2 && parts.every((part) => part !== undefined) ? { "date-parts": parts } : undefined;
}

/** A month by number or by name in English, which may have a day with it; nothing where it is two of them. */
function monthAndDay(month: string, day: string | undefined): readonly number[] {
  const named = [...month.toLowerCase().matchAll(/[a-z]+/g)].map(([word]) =>
    MONTHS.indexOf(word.slice(0, 3)),
  );
  const numbers = [...month.matchAll(/\d+/g)].map(Number);
  const found =
    named.length === 1 ? (named[0] as number) + 1 : named.length === 0 ? numbers.pop() : undefined;
  if (found === undefined || !isInYear(found, undefined)) return [];
  const on = numbers.length > 0 ? numbers[0] : day === undefined ? undefined : Number(day);
  return on !== undefined && isInYear(found, on) ? [found, on] : [found];
}

const isInYear = (month = 1, day = 1): boolean => month >= 1 && month <= 12 && day >= 1 && day <= 31;
