import type { RevisionNumber } from "../../domain/revision.ts";
import type { IdTable } from "./id-table.ts";

/** No term: no region, no broader one. */
export const NO_TERM = -1;

/**
 * What walks run over, at one revision. Terms and claims have numbers of their own, in `terms` and `claims`, which they keep
 * when they are withdrawn. Changed in place by `patchArrays`.
 */
export interface WalkArrays {
  revision: RevisionNumber;
  readonly terms: IdTable;
  readonly claims: IdTable;
  /** By term: 1 where it stands. */
  stands: Uint8Array;
  /** By term: its broader one, or `NO_TERM`. */
  broader: Int32Array;
  /**
   * By term, four numbers that are read together: where its leads lie and where they end, in rows of `leads`, and the same
   * for its statements.
   */
  bounds: Int32Array;
  /** Where accepted `requires` claims lead, and the region of their scope or `NO_TERM`. */
  readonly leads: Lists;
  /** The accepted claims about a term. */
  readonly statements: Lists;
  readonly exceptions: Exceptions;
  /** How many entries were changed or left behind since the arrays were built. */
  patched: number;
}

export const BOUNDS = 4;

/** Lists of rows, those of one term together; where they lie says `bounds`. */
export interface Lists {
  /** Which of the four bounds of a term is where its list begins; the next is where it ends. */
  readonly bound: 0 | 2;
  /** Numbers a row, one after the other. */
  readonly width: 1 | 2;
  rows: Int32Array;
  /** Rows in use; beyond them there is room. */
  used: number;
}

/** The accepted exceptions of each claim, as chains: an exception is one of one claim. */
export interface Exceptions {
  /** By claim, a bit: whether it has any. It is asked of every claim met, and this lies near. */
  has: Uint32Array;
  /** By claim: its first exception, or -1. */
  first: Int32Array;
  /** By exception: the next one of the same claim, or -1. */
  next: Int32Array;
}

/** The rows of a term, from the first to before the last, in rows of the lists. */
export const boundsOf = (
  { bounds }: WalkArrays,
  { bound }: Lists,
  term: number,
): readonly [number, number] => [
  bounds[term * BOUNDS + bound] as number,
  bounds[term * BOUNDS + bound + 1] as number,
];

export const hasExceptions = ({ has }: Exceptions, claim: number): boolean =>
  (((has[claim >>> 5] as number) >>> (claim & 31)) & 1) === 1;

/** Adds an exception to the chain of a claim. */
export function addException({ has, first, next }: Exceptions, of: number, exception: number): void {
  next[exception] = first[of] as number;
  first[of] = exception;
  has[of >>> 5] = (has[of >>> 5] as number) | (1 << (of & 31));
}

/** Takes an exception out of the chain of a claim. Throws where it is not in it. */
export function dropException({ has, first, next }: Exceptions, of: number, exception: number): void {
  const after = next[exception] as number;
  if (first[of] === exception) first[of] = after;
  else {
    let before = first[of] as number;
    while (before >= 0 && next[before] !== exception) before = next[before] as number;
    if (!(before >= 0)) throw new Error("An exception that is withdrawn is not in the arrays");
    next[before] = after;
  }
  next[exception] = -1;
  if (first[of] === -1) has[of >>> 5] = (has[of >>> 5] as number) & ~(1 << (of & 31));
}

/** All bytes that the arrays take. */
export const byteLengthOf = ({ terms, claims, stands, broader, bounds, ...rest }: WalkArrays): number =>
  [
    ...[terms, claims, stands, broader, bounds, rest.leads.rows, rest.statements.rows],
    ...Object.values<Uint32Array | Int32Array>({ ...rest.exceptions }),
  ].reduce((sum, { byteLength }) => sum + byteLength, 0);
