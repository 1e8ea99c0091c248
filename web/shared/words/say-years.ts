import type { YearsJson } from "#server/domain/years.ts";

const saySpan = ([first, last]: YearsJson[number]): string => {
  if (first === null && last === null) return "any year";
  if (first === null) return `${last} or earlier`;
  if (last === null) return `${first} or later`;
  return first === last ? `${first}` : `${first}–${last}`;
};

/** Years in words: "1815 or later", "1710–1760 and 1790–1800", "no year". */
export const sayYears = (years: YearsJson): string => {
  if (years.length === 0) return "no year";
  const spans = years.map(saySpan);
  const last = spans.pop();
  return spans.length === 0 ? `${last}` : `${spans.join(", ")} and ${last}`;
};
