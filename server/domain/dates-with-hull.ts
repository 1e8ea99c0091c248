import { fourDigits, hullOfMask, type MaskedYear, unknownDigits } from "./masked-year.ts";
import type { Span, Year } from "./years.ts";

/** The text of one date without marks, and the first and last year it can mean. */
export interface HullDate {
  readonly text: string;
  readonly hull: Span;
  readonly unknownDigits: number;
}

/** Dates that begin with the year `first`: fewest unknown digits first, its winter (which reaches one year on) last. */
export function datesFrom(first: Year): readonly HullDate[] {
  const masks = masksOf(fourDigits(first), "0").map(ofMask);
  // Year 0000 is not of the common era, so 00XX begins with 0001, and XX00 with 0100.
  const fromNought = masksOf("0000", "0").slice(1).map(ofMask);
  return [...masks, ...fromNought.filter(({ hull }) => hull[0] === first), winterOf(first)];
}

/** Dates that end with the year `last`: fewest unknown digits first, the winter before last. */
export function datesTo(last: Year): readonly HullDate[] {
  const winter = last > 1 ? [winterOf(last - 1)] : [];
  return [...masksOf(fourDigits(last), "9").map(ofMask), ...winter];
}

/** Every masked year with two or more unknown digits, fewest first. */
export function wideMasks(): readonly MaskedYear[] {
  let masks = [""];
  for (let i = 0; i < 4; i++)
    masks = masks.flatMap((mask) => [..."0123456789X"].map((digit) => mask + digit));
  return masks.filter((mask) => unknownDigits(mask) >= 2).sort(byUnknownDigits);
}

const ofMask = (text: MaskedYear): HullDate => ({
  text,
  hull: hullOfMask(text),
  unknownDigits: unknownDigits(text),
});

const winterOf = (year: Year): HullDate => ({
  text: `${fourDigits(year)}-24`,
  hull: [year, year + 1],
  unknownDigits: 0,
});

/** A year with any of its digits that are `digit` unknown. */
function masksOf(year: string, digit: string): readonly MaskedYear[] {
  let masks = [""];
  for (const next of year)
    masks = masks.flatMap((mask) => (next === digit ? [mask + next, `${mask}X`] : [mask + next]));
  return masks.sort(byUnknownDigits);
}

const byUnknownDigits = (a: MaskedYear, b: MaskedYear): number => unknownDigits(a) - unknownDigits(b);
