import type { Dating } from "./dating.ts";
import type { Span, Year, Years } from "./years.ts";

/** Short plain words for a dating: "about 1750", "1750s", "1765 to 1775", "1750 or before", "from 1750 on". */
export function datingInWords(dating: Dating): string {
  if (dating.estimate !== undefined) {
    const span = spanInWords(dating.begin);
    return dating.begin[0] === dating.begin[1] ? span : `${span}, probably near ${dating.estimate}`;
  }
  const about = (years: string, pad: number): string => (pad > 0 ? `about ${years}` : years);
  const perhaps = dating.doubtful ? "perhaps " : "";
  if (dating.role === "event") return perhaps + about(eventInWords(dating), dating.padBegin);
  return perhaps + periodInWords(dating, about);
}

function eventInWords(dating: Dating): string {
  const { begin, end, beginIs, endIs, members, text } = dating;
  if (beginIs === "unknown") return `${end[1]} or before, from when is not known`;
  if (endIs === "unknown") return `${begin[0]} or after, until when is not known`;
  const isAllOf = begin[0] !== end[0] || begin[1] !== end[1];
  return isAllOf ? membersInWords(members, "and") : (dayInWords(text) ?? membersInWords(members, "or"));
}

function membersInWords(members: Years, last: "and" | "or"): string {
  const words = members.map(([from, to]) => {
    if (from === Number.NEGATIVE_INFINITY) return `${to} ${last} before`;
    return to === Number.POSITIVE_INFINITY ? `${from} ${last} after` : spanInWords([from, to]);
  });
  const shown = words.length > 5 ? [...words.slice(0, 3), "…", words.at(-1) as string] : words;
  return shown.length < 2 ? (shown[0] ?? "") : `${shown.slice(0, -1).join(", ")} ${last} ${shown.at(-1)}`;
}

function periodInWords(dating: Dating, about: (years: string, pad: number) => string): string {
  const { begin, end, beginIs, endIs, padBegin, padEnd, text } = dating;
  const first = about(endInWords(begin), padBegin);
  const last = about(endInWords(end), padEnd);
  if (beginIs === "open") return `until ${last}`;
  if (endIs === "open") return `from ${first} on`;
  if (beginIs === "unknown") return `until ${last}, from when is not known`;
  if (endIs === "unknown") return `from ${first}, until when is not known`;
  if (begin[0] !== end[0] || begin[1] !== end[1] || padBegin !== padEnd) return `${first} to ${last}`;
  return about(dayInWords(text) ?? spanInWords(begin), padBegin);
}

/** One year; a decade as "1750s"; other spans as "1765 to 1775". */
function spanInWords([first, last]: Span): string {
  if (first === last) return String(first);
  return isDecade([first, last]) ? `${first}s` : `${first} to ${last}`;
}

const endInWords = ([first, last]: Span): string =>
  first === last || isDecade([first, last]) ? spanInWords([first, last]) : `${first}–${last}`;

/** The decade 1700 to 1709 has no short name that is not also a century's. */
const isDecade = ([first, last]: Span): boolean =>
  last === first + 9 && first % 10 === 0 && first % 100 !== 0;

const MONTHS = [
  ...["January", "February", "March", "April", "May", "June", "July"],
  ...["August", "September", "October", "November", "December"],
];
const SEASONS: ReadonlyMap<number, string> = new Map([
  ...[21, 25, 29].map((code): [number, string] => [code, "spring"]),
  ...[22, 26, 30].map((code): [number, string] => [code, "summer"]),
  ...[23, 27, 31].map((code): [number, string] => [code, "autumn"]),
  ...[24, 28, 32].map((code): [number, string] => [code, "winter"]),
]);

/** Names the month, so that 1805-12 written for 1805 to 1812 is noticed. */
function dayInWords(text: string): string | undefined {
  const found = /^(\d{4})-(\d\d)(?:-(\d\d))?$/.exec(text.replace(/[?~%]/g, ""));
  if (!found) return undefined;
  const [year, month] = [Number(found[1]) as Year, Number(found[2])];
  const day = found[3] === undefined ? "" : `${Number(found[3])} `;
  const name = MONTHS[month - 1] ?? SEASONS.get(month);
  return name && `${day}${name} ${year}`;
}
