import { parse } from "@edtf-ts/core";
import edtf from "edtf";
import { readDating } from "#server/domain/dating.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { Span, Year } from "#server/domain/years.ts";

export type Library = "edtf" | "@edtf-ts/core";
export const LIBRARIES: readonly Library[] = ["edtf", "@edtf-ts/core"];

/** First and last year a library gives a text; `undefined` where it rejects it. */
export function boundsOf(library: Library, text: string): Span | undefined {
  return library === "edtf" ? boundsByEdtf(text) : boundsByEdtfTs(text);
}

/** Ours, as an event: the first year of the begin and the last of the end. */
export function ourBounds(text: string): Span | undefined {
  const dating = readDating(text, "event");
  return isProblem(dating) ? undefined : [dating.begin[0], dating.end[1]];
}

export type Difference = "agrees" | "rejects" | "reads" | "differs";

/** How a library stands to us: it rejects what we read, reads what we refuse, or gives other years. */
export function compare(library: Library, text: string): Difference {
  const [theirs, ours] = [boundsOf(library, text), ourBounds(text)];
  if (!theirs && !ours) return "agrees";
  if (!theirs) return "rejects";
  if (!ours) return "reads";
  return theirs[0] === ours[0] && theirs[1] === ours[1] ? "agrees" : "differs";
}

const yearOf = (time: number): Year => (Number.isFinite(time) ? new Date(time).getUTCFullYear() : time);

function boundsByEdtf(text: string): Span | undefined {
  try {
    const read = edtf(text);
    const isUnbounded = (end: unknown): boolean => end === null || end === Number.POSITIVE_INFINITY;
    if (read.type !== "Interval") return [yearOf(read.min), yearOf(read.max)];
    return [
      isUnbounded(read.lower) ? Number.NEGATIVE_INFINITY : yearOf(read.min),
      isUnbounded(read.upper) ? Number.POSITIVE_INFINITY : yearOf(read.max),
    ];
  } catch {
    return undefined;
  }
}

/** The library says "no bound" with the first and last moment a Date can hold. */
function boundsByEdtfTs(text: string): Span | undefined {
  const read = parse(text);
  if (!read.success) return undefined;
  const [first, last] = [read.value.min.getUTCFullYear(), read.value.max.getUTCFullYear()];
  return [
    first < -200_000 ? Number.NEGATIVE_INFINITY : first,
    last > 200_000 ? Number.POSITIVE_INFINITY : last,
  ];
}
