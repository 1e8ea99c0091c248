import type { Difference, Library } from "./libraries.ts";

/** A way in which a library does not read a date string as docs/spec/1-dates.md says. */
export interface KnownDifference {
  readonly library: Library;
  readonly difference: Exclude<Difference, "agrees">;
  /** Shows the difference; if it does not any more, the entry has to go. */
  readonly example: string;
  readonly reason: string;
  /** The texts that the entry accounts for. */
  readonly covers: (text: string) => boolean;
}

const isList = (text: string): boolean => /^[[{]/.test(text);
const isInterval = (text: string): boolean => !isList(text) && text.includes("/");
const datesIn = (text: string): readonly string[] =>
  text.split(/[/,[\]{} ]|\.\./).filter((date) => date !== "");
const hasMark = (text: string): boolean => /[?~%]/.test(text);
const hasInnerMark = (date: string): boolean => hasMark(date.slice(0, -1));
const firstDigits = (date: string | undefined): string =>
  (/[\dX]{4}/.exec(date ?? "")?.[0] ?? "").replaceAll("X", "0");
const endsBackwards = (text: string): boolean => {
  const [from, to] = datesIn(text);
  return isInterval(text) && to !== undefined && firstDigits(to) <= firstDigits(from);
};
const lastDigits = (date: string): string => (/[\dX]{4}/.exec(date)?.[0] ?? "").replaceAll("X", "9");
const isOutOfOrder = (list: string): boolean => {
  const ascends = (years: readonly string[]): boolean =>
    years.every((year, i) => year >= (years[i - 1] ?? ""));
  return !ascends(datesIn(list).map(firstDigits)) || !ascends(datesIn(list).map(lastDigits));
};
const isSeason = (text: string, codes: RegExp): boolean => new RegExp(`^\\d{4}-(${codes.source})`).test(text);
const holdsEveryYear = (text: string): boolean => /^[[{]\.\./.test(text) && /\.\.[\]}]$/.test(text);
const saysNothing = (text: string): boolean => /^(\.\.)?\/(\.\.)?$/.test(text);
const hasEarlyYear = (text: string): boolean => datesIn(text).some((date) => firstDigits(date) < "0100");
const mayBeYearNought = (text: string): boolean => datesIn(text).some((date) => firstDigits(date) === "0000");

const EDTF: readonly Omit<KnownDifference, "library">[] = [
  {
    difference: "rejects",
    example: "175X~",
    reason:
      "No mark beside an unknown digit, in the date or elsewhere in the text. “About the 1750s” is wanted, and ISO 8601-2 allows it.",
    covers: (text) => text.includes("X") && hasMark(text),
  },
  {
    difference: "rejects",
    example: "[1750~,1760]",
    reason: "No mark after a date in a list.",
    covers: (text) => isList(text) && hasMark(text),
  },
  {
    difference: "rejects",
    example: "1750-22~",
    reason: "No mark after a season.",
    covers: (text) => isSeason(text, /[2-4]\d/) && hasMark(text),
  },
  {
    difference: "rejects",
    example: "1750/XXXX",
    reason:
      "Orders the ends of an interval by their first day, so an end that may lie before the begin is out of order, and so is the same year twice.",
    covers: endsBackwards,
  },
  {
    difference: "rejects",
    example: "1607~/~1944",
    reason: "No interval with a mark to the left or inside of one date and a further mark.",
    covers: (text) => isInterval(text) && datesIn(text).some(hasInnerMark),
  },
  {
    difference: "rejects",
    example: "1750-24/1760",
    reason: "No season in an interval.",
    covers: (text) => isInterval(text) && datesIn(text).some((date) => isSeason(date, /[2-4]\d/)),
  },
  {
    difference: "differs",
    example: "[1667,1668,1670..1672]",
    reason:
      "Takes the last year of a list from the first year of its last range, and the bounds of others from their order.",
    covers: (text) => isList(text) && (/\d\.\.\d/.test(text) || hasMark(text) || isOutOfOrder(text)),
  },
  {
    difference: "differs",
    example: "1750S2",
    reason: "Gives the estimate alone; the significant digits do not widen it.",
    covers: (text) => text.includes("S"),
  },
  {
    difference: "differs",
    example: "1750-24",
    reason: "Ends a winter with its year (and begins a spring with January).",
    covers: (text) => isSeason(text, /24|28|30/),
  },
  {
    difference: "differs",
    example: "00XX",
    reason: "Counts the year 0000, which is 1 BCE.",
    covers: mayBeYearNought,
  },
  {
    difference: "reads",
    example: "../..",
    reason: "A span without an end says nothing; we refuse it.",
    covers: saysNothing,
  },
  {
    difference: "reads",
    example: "[..1760,1750..]",
    reason: "A list that holds every year says nothing; we refuse it.",
    covers: holdsEveryYear,
  },
  {
    difference: "reads",
    example: "[1760..1750]",
    reason: "A range that ends before it begins.",
    covers: (text) => isList(text) && /\d\.\.-?\d/.test(text),
  },
  {
    difference: "reads",
    example: "{175X,1760}",
    reason:
      "In a list of all, we want each date in one known year: else the first and the last are not years.",
    covers: (text) => text.startsWith("{") && text.includes("X"),
  },
  {
    difference: "reads",
    example: "1750S5",
    reason: "A year has four digits, so no more than four can be significant.",
    covers: (text) => /S(0|[5-9]|\d\d)/.test(text),
  },
  {
    difference: "reads",
    example: "18",
    reason: "An extension of the library: 18 for 18XX and 175 for 175X. We offer those.",
    covers: (text) => datesIn(text).some((date) => /^-?[\dX]{2,3}[?~%]?$/.test(date)),
  },
  {
    difference: "reads",
    example: "[1667, 1668]",
    reason: "Blanks are refused, and the text without them offered.",
    covers: (text) => /\s/.test(text),
  },
];

const EDTF_TS: readonly Omit<KnownDifference, "library">[] = [
  {
    difference: "rejects",
    example: "~175X",
    reason: "No mark to the left or inside of a date with an unknown digit.",
    covers: (text) => datesIn(text).some((date) => date.includes("X") && hasInnerMark(date)),
  },
  {
    difference: "rejects",
    example: "1698/~1716",
    reason: "No mark to the left or inside of a date in an interval.",
    covers: (text) => isInterval(text) && datesIn(text).some(hasInnerMark),
  },
  {
    difference: "rejects",
    example: "[..1557,1596..1602]",
    reason: "No range in a list beside an open end.",
    covers: (text) => isList(text) && /\d[?~%]?\.\.[?~%]?\d/.test(text),
  },
  {
    difference: "rejects",
    example: "{..1750,1760..}",
    reason: "No list that is open at both ends.",
    covers: holdsEveryYear,
  },
  {
    difference: "rejects",
    example: "1750-30",
    reason: "No southern seasons (29 to 32).",
    covers: (text) => isSeason(text, /29|3[0-2]/),
  },
  {
    difference: "rejects",
    example: "1750-34~",
    reason: "No mark after a part of the year above 24.",
    covers: (text) => isSeason(text, /2[5-9]|[34]\d/) && hasMark(text),
  },
  {
    difference: "rejects",
    example: "1750-24/1760",
    reason: "No season in an interval.",
    covers: (text) => isInterval(text) && datesIn(text).some((date) => isSeason(date, /[2-4]\d/)),
  },
  {
    difference: "rejects",
    example: "0010/1822",
    reason: "Years below 0100 become years of the twentieth century, so the interval ends before it begins.",
    covers: hasEarlyYear,
  },
  {
    difference: "differs",
    example: "XX50",
    reason: "Years below 0100 become years of the twentieth century.",
    covers: hasEarlyYear,
  },
  {
    difference: "differs",
    example: "1750S2",
    reason: "Gives the estimate alone; the significant digits do not widen it.",
    covers: (text) => text.includes("S"),
  },
  {
    difference: "differs",
    example: "[0100..1600]",
    reason: "Loses the years below 1000 of a range in a list.",
    covers: (text) => isList(text) && /0\d{3}[?~%]?\.\.[?~%]?\d/.test(text),
  },
  {
    difference: "differs",
    example: "1750-26",
    reason: "Takes the northern seasons 25 to 28 for the southern ones.",
    covers: (text) => isSeason(text, /2[5-8]/),
  },
  {
    difference: "reads",
    example: "../..",
    reason: "A span without an end says nothing; we refuse it.",
    covers: saysNothing,
  },
  {
    difference: "reads",
    example: "1733/000X",
    reason:
      "Years below 0100 become years of the twentieth century, so an interval that ends before it begins seems in order.",
    covers: (text) => isInterval(text) && hasEarlyYear(text),
  },
  {
    difference: "reads",
    example: "{175X,1760}",
    reason:
      "In a list of all, we want each date in one known year: else the first and the last are not years.",
    covers: (text) => text.startsWith("{") && text.includes("X"),
  },
  {
    difference: "reads",
    example: "1750 ",
    reason: "Blanks are refused, and the text without them offered.",
    covers: (text) => /\s/.test(text),
  },
  {
    difference: "reads",
    example: "175X-02-31",
    reason: "Does not look whether a day exists where a digit of the year is unknown.",
    covers: (text) =>
      datesIn(text).some((date) => date.includes("X") && /-\d\d[?~%]?-[?~%]?[\dX]{2}/.test(date)),
  },
];

/** Both libraries read what lies outside our profile. */
const OUT_OF_PROFILE: readonly Omit<KnownDifference, "library">[] = [
  {
    difference: "reads",
    example: "-0044",
    reason: "Years before the common era: no furniture of ours, and no year 0.",
    covers: (text) => datesIn(text).some((date) => /^[?~%]?Y?-/.test(date)),
  },
  {
    difference: "reads",
    example: "0000",
    reason: "The year 0000 is 1 BCE.",
    covers: (text) => datesIn(text).some((date) => /^[?~%]?0000/.test(date)),
  },
  {
    difference: "reads",
    example: "Y17500",
    reason: "Years of more than four digits.",
    covers: (text) => /Y/.test(text),
  },
  {
    difference: "reads",
    example: "9999-24",
    reason: "A winter that ends in the year 10000.",
    covers: (text) => datesIn(text).some((date) => /9999[?~%]?-(24|28|30)/.test(date)),
  },
  {
    difference: "reads",
    example: "1750-05-12T10:00:00",
    reason: "Times of day.",
    covers: (text) => /T\d/.test(text),
  },
];

/** Every way in which the two libraries are known to differ from us, or from the standard. */
export const KNOWN_DIFFERENCES: readonly KnownDifference[] = [
  ...[...EDTF, ...OUT_OF_PROFILE].map((entry) => ({ ...entry, library: "edtf" as const })),
  ...[...EDTF_TS, ...OUT_OF_PROFILE].map((entry) => ({ ...entry, library: "@edtf-ts/core" as const })),
];

export const isKnown = (library: Library, difference: Difference, text: string): boolean =>
  KNOWN_DIFFERENCES.some(
    (known) => known.library === library && known.difference === difference && known.covers(text),
  );
