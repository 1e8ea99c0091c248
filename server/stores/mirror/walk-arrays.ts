import type { RevisionNumber } from "../../domain/revision.ts";
import type { IdTable } from "./id-table.ts";

/** Lists of numbers by the number of what they are about: that of `n` lies in the columns from `from[n]` to before `to[n]`. */
export interface Lists {
  from: Int32Array;
  to: Int32Array;
  /** One or more columns of equal length; beyond `used` there is room. */
  columns: Int32Array[];
  used: number;
}

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
  /** By term: the accepted claims about it. */
  readonly statements: Lists;
  /** By term: where accepted `requires` claims lead, and the region of their scope or `NO_TERM`. */
  readonly leads: Lists;
  readonly exceptions: Exceptions;
  /** How many entries were changed or left behind since the arrays were built. */
  patched: number;
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

export const hasExceptions = ({ has }: Exceptions, claim: number): boolean =>
  (((has[claim >>> 5] as number) >>> (claim & 31)) & 1) === 1;

/** Adds an exception to the chain of a claim. */
export function addException({ has, first, next }: Exceptions, of: number, exception: number): void {
  next[exception] = first[of] as number;
  first[of] = exception;
  has[of >>> 5] = (has[of >>> 5] as number) | (1 << (of & 31));
}

/** Takes an exception out of the chain of a claim. */
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
export const byteLengthOf = (arrays: WalkArrays): number =>
  [
    arrays.terms,
    arrays.claims,
    arrays.stands,
    arrays.broader,
    ...[arrays.statements, arrays.leads].flatMap(({ from, to, columns }) => [from, to, ...columns]),
    ...Object.values<Uint32Array | Int32Array>({ ...arrays.exceptions }),
  ].reduce((sum, { byteLength }) => sum + byteLength, 0);
