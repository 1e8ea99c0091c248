import { meet, type Span, type Years } from "../../domain/years.ts";

/** The years in which most furniture was made that is looked at with such a sheet: assumed, used only to put features in order. */
export const YEARS_IN_QUESTION: Span = [1600, 1950];
/** Years on both sides of a claimed date that are in question too. */
const AROUND = 100;

/** The years in question for a claimed date, or without one. */
export const yearsInQuestion = (claimed: Span | undefined): Span =>
  claimed === undefined || !claimed.every(Number.isFinite)
    ? YEARS_IN_QUESTION
    : [claimed[0] - AROUND, claimed[1] + AROUND];

/** How many of the years in question lie in `years`. */
export const yearsTaken = (years: Years, question: Span): number =>
  meet(years, [question]).reduce((sum, [first, last]) => sum + last - first + 1, 0);

/** How evenly `years` divide the years in question: the smaller of those in it and those outside it. 0 divides nothing. */
export function evenness(years: Years, question: Span): number {
  const taken = yearsTaken(years, question);
  return Math.min(taken, question[1] - question[0] + 1 - taken);
}
