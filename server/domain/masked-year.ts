import { canonicalYears, type Span, type Year, type Years } from "./years.ts";

/** Four characters, digits or `X` for a digit that is not known: `1750`, `175X`, `17X5`. */
export type MaskedYear = string;

/** Number of digits not known. */
export const unknownDigits = (year: MaskedYear): number => year.split("X").length - 1;

/** The years a masked year can mean, gaps kept; year 0000 is not of the common era and left out. */
export function yearsOfMask(year: MaskedYear): Years {
  const head = year.replace(/X+$/, "");
  const block = 10 ** (4 - head.length);
  const spans = headsOf(head).map((first): Span => [Math.max(1, first * block), (first + 1) * block - 1]);
  return canonicalYears(spans);
}

/** First and last year a masked year can mean; where that were 0000, the first is the next it can mean. */
export function hullOfMask(year: MaskedYear): Span {
  const first = Number(year.replaceAll("X", "0"));
  return [first || 10 ** (3 - year.lastIndexOf("X")), Number(year.replaceAll("X", "9"))];
}

/** A year in four digits. */
export const fourDigits = (year: Year): string => String(year).padStart(4, "0");

function headsOf(head: string): readonly number[] {
  let heads = [0];
  for (const digit of head) {
    const digits = digit === "X" ? [0, 1, 2, 3, 4, 5, 6, 7, 8, 9] : [Number(digit)];
    heads = heads.flatMap((before) => digits.map((next) => before * 10 + next));
  }
  return heads;
}
