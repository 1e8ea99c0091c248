import type { Dating, End, Role } from "./dating.ts";
import { offerDating } from "./offer-dating.ts";
import { type Problem, problem } from "./problem.ts";
import { type ReadDate, readDate, type Unreadable } from "./read-date.ts";
import { canonicalYears, isAllYears, type Span, type Years, yearsBetween } from "./years.ts";

/** Longest text that is tried: room for a list of every second year. */
const LONGEST = 60_000;
/** Most spans that the members of a list may add up to: `XXX5` alone has a thousand. */
const MOST_SPANS = 20_000;

/** "c. 1750", "ca 1750", "circa 1750", "about 1750". */
const ABOUT = /^\s*(?:c|ca|circa|about|around|approx|approximately|near)\b\.?\s*\d/i;

/**
 * Reads a date string in its role. The refusal says what is wrong and offers in `instead` the canonical form of what
 * was probably meant, where there is one.
 */
export function readDating(text: string, role: Role): Dating | Problem {
  const dating = parseDating(text, role);
  if (!("why" in dating)) return dating;
  const instead = offerDating(text, role, (guess, as) => readable(parseDating(guess, as)));
  const shown = text.length > 60 ? `${text.slice(0, 60)}…` : text;
  const advice = instead
    ? `Write ${instead} instead, if that is what you mean`
    : "Write a year (1750), a decade (175X), a century (17XX), about a year (1750~) or a span of years (1750/1760)";
  return problem(
    "UNREADABLE_DATING",
    `The date "${shown}" cannot be read: ${dating.why}. ${advice}.`,
    [],
    instead,
  );
}

const readable = (dating: Dating | Unreadable): Dating | undefined => ("why" in dating ? undefined : dating);

function parseDating(text: string, role: Role): Dating | Unreadable {
  if (text.length > LONGEST) return { why: `it is ${text.length} characters long` };
  if (/\b(early|mid|middle|late)\b/i.test(text))
    return { why: "early, middle and late mean different years to different people, so years are wanted" };
  if (ABOUT.test(text))
    return { why: "about a year is marked with ~ behind the year, without a word before it" };
  if (/[a-z]{3}/i.test(text.replaceAll("X", "")))
    return { why: "it has words in it, and dates are written in figures and marks" };
  if (/\s/.test(text)) return { why: "it has a blank in it" };
  if (/^[[{]/.test(text)) return readList(text, role);
  if (text.includes("/")) return readInterval(text, role);
  const date = readDate(text);
  if ("why" in date) return date;
  return {
    ...{ role, text, begin: date.hull, end: date.hull, beginIs: "stated", endIs: "stated" },
    ...{ padBegin: date.pad, padEnd: date.pad, doubtful: date.doubtful },
    members: role === "event" ? date.years : yearsBetween(...date.hull),
    ...(date.estimate === undefined ? {} : { estimate: date.estimate }),
  };
}

function readInterval(text: string, role: Role): Dating | Unreadable {
  const ends = text.split("/");
  if (ends.length !== 2) return { why: "a span has one stroke between two dates" };
  const [left, right] = ends.map(readEnd) as [IntervalEnd | Unreadable, IntervalEnd | Unreadable];
  if ("why" in left) return left;
  if ("why" in right) return right;
  if (!left.date && !right.date) return { why: "neither end is stated, so it says nothing" };
  if (left.date && right.date && left.date.earliestDay > right.date.latestDay)
    return { why: "it ends before it begins" };
  const [first, last] = [
    left.date?.hull[0] ?? Number.NEGATIVE_INFINITY,
    right.date?.hull[1] ?? Number.POSITIVE_INFINITY,
  ];
  const shared = {
    ...{ role, text, beginIs: left.is, endIs: right.is },
    doubtful: (left.date?.doubtful || right.date?.doubtful) ?? false,
    members: yearsBetween(first, last),
  };
  const [padLeft, padRight] = [left.date?.pad, right.date?.pad];
  if (role === "event") {
    const pad = Math.max(padLeft ?? 0, padRight ?? 0);
    return { ...shared, begin: [first, last], end: [first, last], padBegin: pad, padEnd: pad };
  }
  return {
    ...shared,
    begin: left.is === "open" ? [first, first] : [first, Math.min(left.date?.hull[1] ?? last, last)],
    end: right.is === "open" ? [last, last] : [Math.max(right.date?.hull[0] ?? first, first), last],
    // An end nobody knows is bounded by the other end, and as widely.
    padBegin: padLeft ?? (left.is === "unknown" ? (padRight ?? 0) : 0),
    padEnd: padRight ?? (right.is === "unknown" ? (padLeft ?? 0) : 0),
  };
}

interface IntervalEnd {
  readonly is: End;
  readonly date?: ReadDate;
}

function readEnd(text: string): IntervalEnd | Unreadable {
  if (text === "..") return { is: "open" };
  if (text === "") return { is: "unknown" };
  const date = readDate(text);
  if ("why" in date) return date;
  if (date.estimate !== undefined) return ESTIMATE_ALONE;
  return { is: "stated", date };
}

function readList(text: string, role: Role): Dating | Unreadable {
  const all = text.startsWith("{");
  if (!text.endsWith(all ? "}" : "]"))
    return { why: "a list opens and closes with [ ] (one of) or { } (all of)" };
  if (role === "period")
    return { why: "a list of dates names single events, and a span of use is wanted here" };
  const elements = readElements(text.slice(1, -1).split(","), all);
  if ("why" in elements) return elements;
  const members = canonicalYears(elements.flatMap((element) => element.years));
  if (isAllYears(members)) return { why: "it holds every year, so it says nothing" };
  const first = members[0]?.[0] as number;
  const last = members.at(-1)?.[1] as number;
  const pad = Math.max(...elements.map((element) => element.pad));
  return {
    ...{ role, text, members, padBegin: pad, padEnd: pad },
    begin: all ? [first, first] : [first, last],
    end: all ? [last, last] : [first, last],
    beginIs: Number.isFinite(first) ? "stated" : "open",
    endIs: Number.isFinite(last) ? "stated" : "open",
    doubtful: elements.some((element) => element.doubtful),
  };
}

interface Element {
  readonly years: Years;
  readonly pad: number;
  readonly doubtful: boolean;
}

function readElements(texts: readonly string[], all: boolean): readonly Element[] | Unreadable {
  const elements: Element[] = [];
  let spans = 0;
  for (const [i, text] of texts.entries()) {
    const element = text.includes("..")
      ? readRange(text, all, { isFirst: i === 0, isLast: i === texts.length - 1 })
      : readMember(text, all);
    if ("why" in element) return element;
    spans += element.years.length;
    if (spans > MOST_SPANS) return { why: "the list names too many years" };
    elements.push(element);
  }
  return elements;
}

function readMember(text: string, all: boolean): Element | Unreadable {
  const date = readDate(text);
  if ("why" in date) return date;
  if (date.estimate !== undefined) return ESTIMATE_ALONE;
  if (all && !isOneYear(date))
    return { why: `in a list of all the dates, each has to fall in one known year, and ${text} does not` };
  return date;
}

function readRange(text: string, all: boolean, place: Place): Element | Unreadable {
  const ends = text.split("..");
  if (ends.length !== 2) return { why: `"${text}" is not a range` };
  const [from, to] = ends.map((end) => (end === "" ? undefined : readDate(end)));
  if (from && "why" in from) return from;
  if (to && "why" in to) return to;
  if (!from && !to) return { why: "a range needs a first or a last year" };
  if (!from && !place.isFirst) return { why: "only the first range of a list can begin with .." };
  if (!to && !place.isLast) return { why: "only the last range of a list can end with .." };
  if (from?.estimate !== undefined || to?.estimate !== undefined) return ESTIMATE_ALONE;
  const needKnown = all || (from !== undefined && to !== undefined);
  if (needKnown && [from, to].some((end) => end && !isOneYear(end)))
    return { why: "a range inside a list goes from one known year to another" };
  if (from && to && from.earliestDay > to.latestDay)
    return { why: `the range ${text} ends before it begins` };
  const span: Span = [from?.hull[0] ?? Number.NEGATIVE_INFINITY, to?.hull[1] ?? Number.POSITIVE_INFINITY];
  return {
    years: [span],
    pad: Math.max(from?.pad ?? 0, to?.pad ?? 0),
    doubtful: (from?.doubtful || to?.doubtful) ?? false,
  };
}

interface Place {
  readonly isFirst: boolean;
  readonly isLast: boolean;
}

const ESTIMATE_ALONE: Unreadable = { why: "significant digits (S) stand in a date by itself only" };
const isOneYear = ({ hull }: ReadDate): boolean => hull[0] === hull[1];
