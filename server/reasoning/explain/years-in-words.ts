import type { Year, YearsJson } from "../../domain/years.ts";

const span = ([first, last]: readonly [Year | null, Year | null]): string => {
  if (first === null && last === null) return "any year";
  if (first === null) return `up to ${last}`;
  if (last === null) return `${first} or later`;
  return first === last ? `${first}` : `${first} to ${last}`;
};

/** A set of years as a phrase: "1720 to 1745, or 1830 or later"; "no year at all" for the empty set. */
export const yearsInWords = (years: YearsJson): string =>
  years.length === 0 ? "no year at all" : years.map(span).join(", or ");
