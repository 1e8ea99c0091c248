import type { Hardness } from "../domain/claim.ts";
import { ALL_YEARS, join, meet, NO_YEARS, type Years } from "../domain/years.ts";
import { type Bound, type ClosedList, countsFor } from "./bound.ts";
import type { Algebra } from "./fold.ts";

/** Years as the value of a fold. `bound` and `follows` say what to make of a single bound and list; the rest is set algebra. */
export const yearsAlgebra = (
  bound: (bound: Bound) => Years,
  follows: (list: ClosedList) => boolean,
): Algebra<Years> => ({
  all: ALL_YEARS,
  bound,
  allOf: (years) => years.reduce(meet, ALL_YEARS),
  anyWay: (list, ways) => (follows(list) ? ways.reduce(join, NO_YEARS) : ALL_YEARS),
});

/** The years under one reading and at one level: possible from what is physical, usual from everything. */
export const yearsUnder = (level: Hardness, reading: "outer" | "inner"): Algebra<Years> =>
  yearsAlgebra(
    (bound) => (countsFor(bound.hardness, level) ? bound[reading] : ALL_YEARS),
    (list) => countsFor(list.hardness, level),
  );
