import type { Dated, NotFoundIn } from "../domain/claim.ts";
import type { Dating } from "../domain/dating.ts";
import { PAD_CENTURY, PAD_YEAR } from "../domain/pad-for.ts";
import { isProblem } from "../domain/problem.ts";
import { readDating } from "../domain/read-dating.ts";
import type { Assumptions } from "../domain/report.ts";
import { roleOfRelation } from "../domain/role-of-relation.ts";
import { complement, NO_YEARS, type Year, type Years, yearsBetween } from "../domain/years.ts";

/** What one claim allows. `outer` takes all doubt of its date loosely, `inner` strictly. */
export interface Allowed {
  readonly outer: Years;
  readonly inner: Years;
}

/** A dated claim as the engine reads it. */
export interface ClaimYears extends Allowed {
  /** The ends it states: one for what begins or ends, both for a span. */
  readonly states: "begin" | "end" | "both" | "none";
  /** The part of it that concerns its begin alone, and its end alone. */
  readonly since: Allowed;
  readonly until: Allowed;
  /** Earliest and latest year by which it has the thing exist; infinite where it does not say. */
  readonly existsFrom: { readonly outer: Year; readonly inner: Year };
  readonly doubtful: boolean;
  /** A span that is known to have ended, nobody says when. */
  readonly endUnknown: boolean;
}

/** Reads a date that was accepted before; one that cannot be read is a defect of the caller. */
export function mustReadDating(text: string, role: Dating["role"]): Dating {
  const dating = readDating(text, role);
  if (isProblem(dating)) throw new Error(dating.message);
  return dating;
}

/** Years by which an end is widened, under the assumptions of this examination. */
export const padUnder = (pad: number, { padYear, padCentury }: Assumptions): number =>
  pad === PAD_YEAR ? padYear : pad === PAD_CENTURY ? padCentury : pad;

/** All years from one on; none if it is never reached. */
export const yearsSince = (year: Year): Years =>
  year === Number.POSITIVE_INFINITY ? NO_YEARS : yearsBetween(year, Number.POSITIVE_INFINITY);
const yearsUntil = (year: Year): Years =>
  year === Number.NEGATIVE_INFINITY ? NO_YEARS : yearsBetween(Number.NEGATIVE_INFINITY, year);
const ALL: Allowed = {
  outer: yearsSince(Number.NEGATIVE_INFINITY),
  inner: yearsSince(Number.NEGATIVE_INFINITY),
};

/** The years a claim allows (engine rules E2, E3, E12). A `not found in` without a date allows none. */
export function yearsOfClaim(claim: Dated | NotFoundIn, assumptions: Assumptions): ClaimYears {
  if (claim.when === undefined) return NONE;
  const dating = mustReadDating(claim.when, roleOfRelation(claim.relation));
  const padBegin = padUnder(dating.padBegin, assumptions);
  const padEnd = padUnder(dating.padEnd, assumptions);
  const first = { outer: dating.begin[0] - padBegin, inner: dating.begin[1] + padBegin };
  const last = { outer: dating.end[1] + padEnd, inner: dating.end[0] - padEnd };
  const since = { outer: yearsSince(first.outer), inner: yearsSince(first.inner) };
  const until = { outer: yearsUntil(last.outer), inner: yearsUntil(last.inner) };
  const shared = {
    existsFrom: first,
    doubtful: dating.doubtful,
    endUnknown: dating.role === "period" && dating.endIs === "unknown",
  };
  switch (claim.relation) {
    case "introduced":
    case "common from":
      return { ...shared, ...since, since, until: ALL, states: "begin" };
    case "discontinued":
    case "common until":
      return { ...shared, ...until, since: ALL, until, states: "end" };
    case "attested":
      return { ...shared, ...ALL, since: ALL, until: ALL, states: "none" };
    case "not found in": {
      const outer = complement(yearsBetween(first.inner, last.inner));
      const inner = complement(yearsBetween(first.outer, last.outer));
      return { ...shared, outer, inner, since: ALL, until: ALL, states: "none" };
    }
    case "current":
    case "active":
      return {
        ...shared,
        outer: yearsBetween(first.outer, last.outer),
        inner: yearsBetween(first.inner, last.inner),
        ...{ since, until },
        states: statedEnds(dating),
      };
  }
}

function statedEnds({ beginIs, endIs }: Dating): ClaimYears["states"] {
  if (beginIs === "stated") return endIs === "stated" ? "both" : "begin";
  return endIs === "stated" ? "end" : "none";
}

const NONE: ClaimYears = {
  ...{ outer: NO_YEARS, inner: NO_YEARS, since: ALL, until: ALL, states: "none" },
  existsFrom: { outer: Number.NEGATIVE_INFINITY, inner: Number.POSITIVE_INFINITY },
  ...{ doubtful: false, endUnknown: false },
};
