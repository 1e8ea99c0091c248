import { datesFrom, datesTo, type HullDate, wideMasks } from "./dates-with-hull.ts";
import type { Dating } from "./dating.ts";
import { fourDigits, hullOfMask, type MaskedYear, unknownDigits, yearsOfMask } from "./masked-year.ts";
import { padFor } from "./pad-for.ts";
import { isWithin, type Span, sameYears, type Year, type Years } from "./years.ts";

/**
 * Prints the canonical string of a dating that was read: one string for one dating, in whole years.
 * `readDating(printDating(d), d.role)` equals `d` but for `text`.
 */
export function printDating(dating: Dating): string {
  if (dating.estimate !== undefined) return printEstimate(dating.estimate, dating.begin);
  return dating.role === "period" ? printPeriod(dating) : printEvent(dating);
}

function printEstimate(estimate: Year, block: Span): string {
  const year = fourDigits(estimate);
  const digits = [4, 3, 2, 1].find((n) => sameSpan(hullOfMask(year.slice(0, n).padEnd(4, "X")), block));
  return `${year}S${digits}`;
}

function printPeriod(dating: Dating): string {
  const { begin, end, beginIs, endIs, padBegin, padEnd, doubtful } = dating;
  const asOne = beginIs === "stated" && endIs === "stated" && padBegin === padEnd && sameSpan(begin, end);
  const one = asOne
    ? datesFrom(begin[0]).find((date) => sameSpan(date.hull, begin) && bears(date, padBegin))
    : undefined;
  if (one) return mark(one.text, padBegin, doubtful);
  return `${printBegin(dating)}/${printLast(dating)}`;
}

/** The begin of the end and the end of the begin are cut where they meet; the date printed may then reach further. */
function printBegin({ begin, end, beginIs, padBegin, doubtful }: Dating): string {
  if (beginIs !== "stated") return beginIs === "open" ? ".." : "";
  const [first, last] = begin;
  const fits = ({ hull }: HullDate): boolean => hull[1] === last || (last === end[1] && hull[1] > last);
  return printDate(
    datesFrom(first).filter((date) => date.hull[0] === first && fits(date)),
    padBegin,
    doubtful,
  );
}

function printLast({ begin, end, endIs, padEnd, doubtful }: Dating): string {
  if (endIs !== "stated") return endIs === "open" ? ".." : "";
  const [first, last] = end;
  const fits = ({ hull }: HullDate): boolean => hull[0] === first || (first === begin[0] && hull[0] < first);
  return printDate(
    datesTo(last).filter((date) => date.hull[1] === last && fits(date)),
    padEnd,
    doubtful,
  );
}

function printEvent(dating: Dating): string {
  const { begin, end, beginIs, endIs, members, padBegin: pad, doubtful } = dating;
  if (!sameSpan(begin, end)) return `{${printList(dating).slice(1, -1)}}`;
  const [first, last] = begin;
  if (beginIs === "unknown") return `/${printDate(datesTo(last), pad, doubtful)}`;
  if (endIs === "unknown") return `${printDate(datesFrom(first), pad, doubtful)}/`;
  if (!Number.isFinite(last - first)) return printList(dating);
  const one = datesFrom(first).find(
    ({ text, ...date }) => !text.includes("-") && bears(date, pad) && sameYears(yearsOfMask(text), members),
  );
  if (one) return mark(one.text, pad, doubtful);
  return (members.length === 1 ? printPair(dating) : undefined) ?? printList(dating);
}

/** Two dates with a stroke. A pad of a century needs a date with two unknown digits at one of the ends. */
function printPair({ begin: [first, last], padBegin: pad, doubtful }: Dating): string | undefined {
  const [from, to] = [fourDigits(first), fourDigits(last)];
  if (isNarrow(pad)) return `${mark(from, pad, doubtful)}/${mark(to, pad, doubtful)}`;
  const left = datesFrom(first).find((date) => bears(date, pad));
  if (left) return `${mark(left.text, pad, doubtful)}/${mark(to, 0, doubtful)}`;
  const right = datesTo(last).find((date) => bears(date, pad));
  return right && `${mark(from, 0, doubtful)}/${mark(right.text, pad, doubtful)}`;
}

function printList({ members, padBegin: pad, doubtful }: Dating): string {
  const print = (year: Year): string =>
    Number.isFinite(year) ? mark(fourDigits(year), isNarrow(pad) ? pad : 0, doubtful) : "";
  const ranges = members.map(([first, last]) =>
    first === last ? print(first) : `${print(first)}..${print(last)}`,
  );
  if (isNarrow(pad)) return `[${ranges.join(",")}]`;
  const place = Number.isFinite(members[0]?.[0]) ? 0 : 1;
  return `[${ranges.toSpliced(place, 0, mark(wideMaskWithin(members), pad, doubtful)).join(",")}]`;
}

/** A date with a pad of a century that adds no year: the nearest to where the years begin, or where they end. */
function wideMaskWithin(members: Years): MaskedYear {
  const within = wideMasks().filter((year) => isWithin(yearsOfMask(year), members));
  const fewest = within.filter((year) => unknownDigits(year) === unknownDigits(within[0] ?? ""));
  const mask = Number.isFinite(members[0]?.[0]) ? fewest[0] : fewest.at(-1);
  if (mask === undefined) throw new RangeError("No date string widens these years by so much");
  return mask;
}

function printDate(dates: readonly HullDate[], pad: number, doubtful: boolean): string {
  const date = dates.find((candidate) => bears(candidate, pad));
  if (!date) throw new RangeError("No date string has these bounds");
  return mark(date.text, pad, doubtful);
}

/** A pad that any date can have. */
const isNarrow = (pad: number): boolean => pad === 0 || pad === padFor(0);
const bears = (date: Pick<HullDate, "unknownDigits">, pad: number): boolean =>
  pad === 0 || padFor(date.unknownDigits) === pad;
const sameSpan = (a: Span, b: Span): boolean => a[0] === b[0] && a[1] === b[1];
const mark = (date: string, pad: number, doubtful: boolean): string =>
  date + (pad > 0 ? (doubtful ? "%" : "~") : doubtful ? "?" : "");
