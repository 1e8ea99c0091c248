import type { Dating } from "./dating.ts";
import { fourDigits, hullOfMask, type MaskedYear, unknownDigits, yearsOfMask } from "./masked-year.ts";
import { padFor } from "./pad-for.ts";
import { canonicalYears, isWithin, type Span, sameYears, type Year, type Years } from "./years.ts";

/** Prints the canonical string: one string for one dating. `readDating(printDating(d), d.role)` equals `d` but for `text`. */
export function printDating(dating: Dating): string {
  if (dating.estimate !== undefined) return printEstimate(dating.estimate, dating.begin);
  return dating.role === "period" ? printPeriod(dating) : printEvent(dating);
}

/** What can stand for one date: a masked year, or its winter, which reaches one year on. */
interface Token {
  readonly year: MaskedYear;
  readonly winter: boolean;
}

function printPeriod(dating: Dating): string {
  const { begin, end, padBegin, padEnd, beginIs, endIs } = dating;
  const one = beginIs === "stated" && endIs === "stated" && padBegin === padEnd && sameSpan(begin, end);
  const alone =
    one && tokensFrom(begin).find((token) => sameSpan(hullOf(token), begin) && hasPad(token, padBegin));
  if (alone) return printToken(alone, padBegin, dating.doubtful);
  return `${printBegin(dating)}/${printLast(dating)}`;
}

function printBegin({ begin, end, beginIs, padBegin, doubtful }: Dating): string {
  if (beginIs !== "stated") return beginIs === "open" ? ".." : "";
  const tightened = begin[1] === end[1];
  const token = tokensFrom(begin).find((candidate) => {
    const [first, last] = hullOf(candidate);
    return (
      first === begin[0] &&
      hasPad(candidate, padBegin) &&
      (last === begin[1] || (tightened && last > begin[1]))
    );
  });
  return printFound(token, padBegin, doubtful);
}

function printLast({ begin, end, endIs, padEnd, doubtful }: Dating): string {
  if (endIs !== "stated") return endIs === "open" ? ".." : "";
  const tightened = end[0] === begin[0];
  const token = tokensTo(end).find((candidate) => {
    const [first, last] = hullOf(candidate);
    return (
      last === end[1] && hasPad(candidate, padEnd) && (first === end[0] || (tightened && first < end[0]))
    );
  });
  return printFound(token, padEnd, doubtful);
}

function printEvent(dating: Dating): string {
  const { members, padBegin: pad, doubtful, begin, end } = dating;
  const [first, last] = [members[0]?.[0] as Year, members.at(-1)?.[1] as Year];
  if (!sameSpan(begin, end)) return `{${printRanges(members, pad, doubtful)}}`;
  if (dating.beginIs === "unknown")
    return `/${printFound(
      tokensTo([last, last]).find((token) => hullOf(token)[1] === last && hasPad(token, pad)),
      pad,
      doubtful,
    )}`;
  if (dating.endIs === "unknown")
    return `${printFound(
      tokensFrom([first, first]).find((token) => hullOf(token)[0] === first && hasPad(token, pad)),
      pad,
      doubtful,
    )}/`;
  const dates = tokensFrom([first, last]).filter(
    (token) => sameYears(yearsOf(token), members) && hasPad(token, pad),
  );
  const [year, winter] = [dates.find((token) => !token.winter), dates[0]];
  if (year) return printToken(year, pad, doubtful);
  const oneSpan = members.length === 1 && Number.isFinite(first) && Number.isFinite(last);
  const pair = oneSpan ? printPair([first, last], pad, doubtful) : undefined;
  if (pair) return pair;
  if (winter) return printToken(winter, pad, doubtful);
  return printList(members, pad, doubtful);
}

/** Two years with a stroke; a pad of a century needs a date with two unknown digits at one of the ends. */
function printPair([first, last]: Span, pad: number, doubtful: boolean): string | undefined {
  const print = (token: Token): string => printToken(token, pad, doubtful);
  const [from, to] = [plain(first), plain(last)];
  if (hasPad(from, pad)) return `${print(from)}/${print(to)}`;
  const left = tokensFrom([first, last]).find((token) => hullOf(token)[0] === first && hasPad(token, pad));
  if (left) return `${print(left)}/${printToken(to, 0, doubtful)}`;
  const right = tokensTo([first, last]).find((token) => hullOf(token)[1] === last && hasPad(token, pad));
  return right && `${printToken(from, 0, doubtful)}/${print(right)}`;
}

function printList(members: Years, pad: number, doubtful: boolean): string {
  if (pad === 0 || hasPad(plain(1), pad)) return `[${printRanges(members, pad, doubtful)}]`;
  const mask = ALL_WIDE_MASKS.find((year) => isWithin(yearsOfMask(year), members));
  if (mask === undefined) throw new RangeError(`No date string has a pad of ${pad} years on these years`);
  const wide = printToken({ year: mask, winter: false }, pad, doubtful);
  const ranges = printRanges(members, 0, doubtful);
  return ranges.startsWith("..")
    ? `[${ranges.replace(/,|$/, `,${wide},`).replace(/,$/, "")}]`
    : `[${wide},${ranges}]`;
}

function printRanges(members: Years, pad: number, doubtful: boolean): string {
  const print = (year: Year): string => (Number.isFinite(year) ? printToken(plain(year), pad, doubtful) : "");
  return members
    .map(([first, last]) => (first === last ? print(first) : `${print(first)}..${print(last)}`))
    .join(",");
}

function printEstimate(estimate: Year, block: Span): string {
  const digits = [4, 3, 2, 1].find((n) =>
    sameSpan(hullOfMask(fourDigits(estimate).slice(0, n).padEnd(4, "X")), block),
  );
  if (digits === undefined)
    throw new RangeError(`${estimate} has no significant digits that give these years`);
  return `${fourDigits(estimate)}S${digits}`;
}

function printFound(token: Token | undefined, pad: number, doubtful: boolean): string {
  if (!token) throw new RangeError("No date string has these bounds");
  return printToken(token, pad, doubtful);
}

function printToken({ year, winter }: Token, pad: number, doubtful: boolean): string {
  const mark = pad > 0 ? (doubtful ? "%" : "~") : doubtful ? "?" : "";
  return `${year}${winter ? `${mark}-24` : mark}`;
}

const plain = (year: Year): Token => ({ year: fourDigits(year), winter: false });
const hasPad = (token: Token, pad: number): boolean => pad === 0 || padFor(unknownDigits(token.year)) === pad;
const sameSpan = (a: Span, b: Span): boolean => a[0] === b[0] && a[1] === b[1];

function hullOf({ year, winter }: Token): Span {
  const [first, last] = hullOfMask(year);
  return [first, winter ? last + 1 : last];
}

function yearsOf({ year, winter }: Token): Years {
  const years = yearsOfMask(year);
  return winter ? canonicalYears(years.map(([first, last]): Span => [first, last + 1])) : years;
}

/** Dates that begin with the first year of a span, fewest unknown digits first, winters last. */
function tokensFrom([first]: Span): readonly Token[] {
  if (!Number.isFinite(first)) return [];
  const masks = masksOf(fourDigits(first), "0");
  return withWinters(first === 1 ? [...masks, ...masksOf("0000", "0").slice(1)] : masks);
}

/** Dates that end with the last year of a span. */
function tokensTo([, last]: Span): readonly Token[] {
  if (!Number.isFinite(last)) return [];
  const winters = last > 1 ? masksOf(fourDigits(last - 1), "9").map((year) => ({ year, winter: true })) : [];
  return [...masksOf(fourDigits(last), "9").map((year) => ({ year, winter: false })), ...winters];
}

const withWinters = (years: readonly MaskedYear[]): readonly Token[] =>
  [false, true].flatMap((winter) => years.map((year) => ({ year, winter })));

/** A year with any of its digits `digit` masked, fewest masked first. */
function masksOf(year: string, digit: string): readonly MaskedYear[] {
  let masks = [""];
  for (const next of year)
    masks = masks.flatMap((mask) => (next === digit ? [mask + next, `${mask}X`] : [mask + next]));
  return masks.sort((a, b) => unknownDigits(a) - unknownDigits(b));
}

const ALL_WIDE_MASKS: readonly MaskedYear[] = (() => {
  let masks = [""];
  for (let i = 0; i < 4; i++)
    masks = masks.flatMap((mask) => [..."0123456789X"].map((digit) => mask + digit));
  return masks.filter((mask) => unknownDigits(mask) >= 2);
})();
