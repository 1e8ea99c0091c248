import { meet, type Span, type Years, yearsBetween } from "../../domain/years.ts";
import { compareHoldings } from "../atoms.ts";
import type { PlacedWindows, Window } from "./windows.ts";
import { addAll, cutLine, keepCommon, type YearBits, type YearLine } from "./year-line.ts";

/** Windows that leave the same years: in a clash of three or more any one of them does as well as another. */
export interface Alike {
  readonly years: Years;
  readonly bits: YearBits;
  /** None for the claimed years. */
  readonly windows: readonly Window[];
}

/** A part from a region of its own, its alike windows place by place there. */
export interface TornLine {
  readonly places: readonly (readonly Alike[])[];
  /** The years that all of it leaves, whichever the place. */
  readonly bits: YearBits;
}

/** The windows of a place of the piece on one line of years; what bounds nothing or leaves nothing by itself is not on it. */
export interface WideLines {
  readonly line: YearLine;
  readonly claimed: Alike;
  readonly fixed: readonly Alike[];
  readonly torn: readonly TornLine[];
}

/** Puts windows on one line. */
export function wideLines(placed: PlacedWindows, claimed: Span, examined: number): WideLines {
  const until = yearsBetween(Number.NEGATIVE_INFINITY, examined);
  const claimedYears = meet([claimed], until);
  const isBounding = ({ made }: Window): boolean =>
    made.length !== 1 || made[0]?.[0] !== Number.NEGATIVE_INFINITY || made[0][1] < examined;
  const windows = placed.windows.filter((window) => window.made.length > 0 && isBounding(window));
  const torn = placed.torn
    .map(({ places }) => places.map((place) => place.filter(isBounding)))
    .filter((places) => places.every((place) => place.length > 0));
  const line = cutLine([claimedYears, ...[...windows, ...torn.flat(2)].map(({ made }) => made)], examined);
  return {
    line,
    claimed: { years: claimedYears, bits: line.bitsOf(claimedYears), windows: [] },
    fixed: alikes(windows, line),
    torn: torn.map((places) => {
      const read = places.map((place) => alikes(place, line));
      return { places: read, bits: bitsOfTorn(read, line) };
    }),
  };
}

function alikes(windows: readonly Window[], line: YearLine): readonly Alike[] {
  const byYears = Map.groupBy(windows, ({ made }) => made.flat().join(" "));
  return [...byYears.values()].map((alike) => {
    const years = (alike[0] as Window).made;
    return { years, bits: line.bitsOf(years), windows: [...alike].sort(compareWindows) };
  });
}

const compareWindows = (a: Window, b: Window): number => compareHoldings(a.held, b.held);

function bitsOfTorn(places: readonly (readonly Alike[])[], line: YearLine): YearBits {
  const either = new Uint32Array(line.all.length);
  for (const place of places) {
    const here = line.all.slice();
    for (const { bits } of place) keepCommon(here, bits);
    addAll(either, here);
  }
  return either;
}
