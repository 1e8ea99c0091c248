import type { Claim } from "../../domain/claim.ts";
import { compareIds } from "../../domain/compare.ts";
import type { ClaimId } from "../../domain/ids.ts";
import type { BoundOf } from "../../ports/dating-reader.ts";
import { lengthened, roomFor } from "./change-lists.ts";
import { NO_TERM, type WalkArrays } from "./walk-arrays.ts";

/** Numbers a row. */
export const WIDTH = 3;
/** Numbers a term in `places`. */
export const PLACES = 3;

/**
 * What ways need of the claims about terms that were read lately: a row for each claim that dates one, and for each term that
 * a claim leads to. Those of one term lie together, dates first, each in the order of the ids.
 */
export interface TermWays {
  /** Makes room for the terms that there are. */
  readonly begin: () => void;
  /** By term: its first row and one more, or 0 where it was not read; its first lead; and where its rows end. */
  readonly places: () => Int32Array;
  /** By row the region of the scope, or `NO_TERM`; then of a date the first year that it leaves and the last, of a lead the term. */
  readonly numbers: () => Int32Array;
  /** By row. */
  readonly claims: readonly ClaimId[];
  readonly has: (term: number) => boolean;
  readonly put: (term: number, about: readonly Claim[]) => void;
  readonly forget: (term: number) => void;
  /** Forgets everything where more is held than was meant to be. */
  readonly shrink: () => void;
}

/** Beyond all years, in whole numbers. */
const FARTHEST = 2 ** 31 - 1;
const inReach = (year: number): number => Math.max(-FARTHEST, Math.min(FARTHEST, year));

/** Rows are kept up to `limit`, or somewhat more. */
export function termWays({ terms }: WalkArrays, boundOf: BoundOf, limit: number): TermWays {
  let places = new Int32Array(0);
  let numbers = new Int32Array(0);
  const claims: ClaimId[] = [];

  const add = (id: ClaimId, row: readonly number[]): void => {
    const at = claims.push(id) * WIDTH;
    if (at > numbers.length) numbers = lengthened(numbers, roomFor(at) * 2);
    numbers.set(row, at - WIDTH);
  };
  const whereOf = (claim: Claim): number =>
    "scope" in claim && claim.scope.region !== undefined ? terms.find(claim.scope.region) : NO_TERM;
  return {
    claims,
    begin: () => {
      if (places.length < terms.size * PLACES) places = lengthened(places, roomFor(terms.size) * PLACES);
    },
    places: () => places,
    numbers: () => numbers,
    has: (term) => places[term * PLACES] !== 0,
    put: (term, about) => {
      const sorted = [...about].sort(compareIds);
      const first = claims.length;
      for (const claim of sorted) {
        const bound = boundOf(claim);
        if (bound) add(claim.id, [whereOf(claim), inReach(bound[0]), inReach(bound[1])]);
      }
      const lead = claims.length;
      for (const claim of sorted)
        if (claim.relation === "requires")
          for (const to of new Set(claim.ways.flat())) add(claim.id, [whereOf(claim), terms.find(to)]);
      places.set([first + 1, lead, claims.length], term * PLACES);
    },
    forget: (term) => {
      if (term * PLACES < places.length) places[term * PLACES] = 0;
    },
    shrink: () => {
      if (claims.length <= limit) return;
      claims.length = 0;
      places.fill(0);
    },
  };
}
