import { hullOfMask, unknownDigits, yearsOfMask } from "./masked-year.ts";
import { padFor } from "./pad-for.ts";
import type { Span, Year, Years } from "./years.ts";

/** One date of an EDTF string, reduced to what its years say. */
export interface ReadDate {
  readonly years: Years;
  readonly hull: Span;
  /** Earliest and latest day it can mean, as sortable numbers yyyymmdd; for the order of two dates alone. */
  readonly earliestDay: number;
  readonly latestDay: number;
  readonly pad: number;
  readonly doubtful: boolean;
  readonly estimate?: Year;
}

/** Why a date cannot be read, as the second half of a sentence. */
export interface Unreadable {
  readonly why: string;
}

const DATE = /^([?~%]?)([\dX]{4})([?~%]?)(?:-([?~%]?)([\dX]{2})([?~%]?)(?:-([?~%]?)([\dX]{2})([?~%]?))?)?$/;
const SIGNIFICANT = /^(\d{4})S([1-4])$/;

/** First and last month of the season codes 21 to 41 of ISO 8601-2; 14 is February of the year after. */
const SEASON_MONTHS: ReadonlyMap<number, Span> = new Map<number, Span>([
  ...[21, 25, 31].map((code): [number, Span] => [code, [3, 5]]),
  ...[22, 26, 32].map((code): [number, Span] => [code, [6, 8]]),
  ...[23, 27, 29].map((code): [number, Span] => [code, [9, 11]]),
  ...[24, 28, 30].map((code): [number, Span] => [code, [12, 14]]),
  ...[33, 34, 35, 36].map((code, i): [number, Span] => [code, [3 * i + 1, 3 * i + 3]]),
  ...[37, 38, 39].map((code, i): [number, Span] => [code, [4 * i + 1, 4 * i + 4]]),
  ...[40, 41].map((code, i): [number, Span] => [code, [6 * i + 1, 6 * i + 6]]),
]);

const ANY_MONTH: readonly number[] = Array.from({ length: 12 }, (_, i) => i + 1);
const ANY_DAY: readonly number[] = Array.from({ length: 31 }, (_, i) => i + 1);

/** Reads one date: a year with or without unknown digits, month or season, day, marks and significant digits. */
export function readDate(text: string): ReadDate | Unreadable {
  const significant = SIGNIFICANT.exec(text);
  if (significant) return readSignificant(significant[1] as string, Number(significant[2]));
  const found = DATE.exec(text);
  if (!found) return { why: notADate(text) };
  const [, beforeYear = "", year = "", afterYear = "", , month, afterMonth = "", , day, afterDay = ""] =
    found;
  if (year === "0000") return { why: `year 0000 is before the common era, which is out of range` };
  const months = monthsOf(year, month, day !== undefined);
  if ("why" in months) return months;
  if (year === "9999" && reachesOn(months))
    return { why: "its winter ends in a year of more than four digits" };
  const days = day === undefined ? ANY_DAY : matching(day, 31);
  if (day !== undefined && !dayExists(yearsOfMask(year), months, days))
    return { why: `there is no such day as ${text}` };
  const reachYear = beforeYear + afterYear + afterMonth + afterDay;
  return dateOf(year, months, days, reachYear);
}

function dateOf(year: string, months: readonly number[], days: readonly number[], marks: string): ReadDate {
  const [first, last] = hullOfMask(year);
  return {
    years: reachesOn(months) ? [[first, last + 1]] : yearsOfMask(year),
    hull: [first, reachesOn(months) ? last + 1 : last],
    earliestDay: dayNumber(first, months[0] as number, days[0] as number),
    latestDay: dayNumber(last, months.at(-1) as number, days.at(-1) as number),
    pad: /[~%]/.test(marks) ? padFor(unknownDigits(year)) : 0,
    doubtful: /[?%]/.test(marks),
  };
}

/** Whether a season ends in the year after. */
const reachesOn = (months: readonly number[]): boolean => (months.at(-1) as number) > 12;

function readSignificant(year: string, digits: number): ReadDate | Unreadable {
  const estimate = Number(year);
  if (estimate === 0) return { why: "year 0000 is before the common era, which is out of range" };
  const mask = year.slice(0, digits).padEnd(4, "X");
  return { ...dateOf(mask, ANY_MONTH, ANY_DAY, ""), estimate };
}

const dayNumber = (year: Year, month: number, day: number): number =>
  month > 12 ? dayNumber(year + 1, month - 12, day) : year * 10_000 + month * 100 + day;

function monthsOf(year: string, month: string | undefined, withDay: boolean): readonly number[] | Unreadable {
  if (month === undefined) return ANY_MONTH;
  const season = SEASON_MONTHS.get(Number(month));
  if (season && year.includes("X")) return { why: "a season needs a year with all its digits" };
  if (season && withDay) return { why: `${month} is a season, and a season has no day` };
  const months = season ? [season[0], season[1]] : matching(month, 12);
  return months.length > 0 ? months : { why: `there is no month or season ${month}` };
}

/** Numbers from 1 to `last` that two characters, digits or `X`, can mean. */
function matching(mask: string, last: number): readonly number[] {
  const pattern = new RegExp(`^${mask.replaceAll("X", "\\d")}$`);
  return Array.from({ length: last }, (_, i) => i + 1).filter((n) =>
    pattern.test(String(n).padStart(2, "0")),
  );
}

function dayExists(years: Years, months: readonly number[], days: readonly number[]): boolean {
  const first = days[0];
  if (first === undefined) return false;
  return months.some((month) => {
    if (month !== 2) return first <= ([4, 6, 9, 11].includes(month) ? 30 : 31);
    return first <= 28 || (first === 29 && years.some(hasLeapYear));
  });
}

function hasLeapYear([first, last]: Span): boolean {
  for (let year = first; year <= Math.min(last, first + 8); year++)
    if (year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)) return true;
  return false;
}

function notADate(text: string): string {
  if (text === "") return "a date is missing";
  if (/T\d/.test(text)) return "it has a time of day, and days are the finest dates kept";
  if (/^-\d/.test(text)) return "years before the common era are out of range";
  if (/^[Yy]-?\d/.test(text)) return "years of more than four digits are out of range";
  if (/^[\dX]{4}S/.test(text)) return "S stands for 1 to 4 significant digits at the end of a full year";
  if (/^[\dX]{4}[?~%]{2}$/.test(text)) return "there is one mark to a year, % where both ? and ~ are meant";
  return "a date is a year of four digits, X for each that is not known, with - before month and day";
}
