import type { PartId } from "../../domain/ids.ts";

/** A small set of numbers as bits, 32 a word. */
export type Bits = Uint32Array;

/** Parts that cannot be of different origin, as one; and where and when they can be from. */
export interface Origin {
  readonly parts: readonly PartId[];
  /** Cells of place and year that all of them allow. */
  readonly cells: Bits;
}

/** Which parts can share an origin: those of which some cell is common to all, and of which no two are kept apart. */
export interface OriginPuzzle {
  /** Each has a cell; sorted by its first part. */
  readonly origins: readonly Origin[];
  /** Of each, those that it cannot share an origin with: apart in every cell, or recorded as separate. */
  readonly apart: readonly Bits[];
}

export const noBits = (size: number): Bits => new Uint32Array((size + 31) >> 5);

export const hasBit = (bits: Bits, at: number): boolean =>
  (((bits[at >> 5] as number) >>> (at & 31)) & 1) === 1;

export function setBit(bits: Bits, at: number): void {
  bits[at >> 5] = (bits[at >> 5] as number) | (1 << (at & 31));
}

export const meetBits = (a: Bits, b: Bits): Bits => a.map((word, i) => word & (b[i] as number));
export const isNoBits = (bits: Bits): boolean => bits.every((word) => word === 0);

/** Whether two sets share a member. */
export function shareBits(a: Bits, b: Bits): boolean {
  for (let i = 0; i < a.length; i++) if (((a[i] as number) & (b[i] as number)) !== 0) return true;
  return false;
}

/** Puts a puzzle together. `separate`: pairs of origins that are recorded as such. */
export function originPuzzle(
  origins: readonly Origin[],
  separate: readonly (readonly [number, number])[],
): OriginPuzzle {
  const apart = origins.map(({ cells }) => {
    const against = noBits(origins.length);
    for (const [j, other] of origins.entries()) if (!shareBits(cells, other.cells)) setBit(against, j);
    return against;
  });
  for (const [a, b] of separate) {
    setBit(apart[a] as Bits, b);
    setBit(apart[b] as Bits, a);
  }
  return { origins, apart };
}

/** The puzzle with two origins that must not be one. */
export function keptApart({ origins, apart }: OriginPuzzle, a: number, b: number): OriginPuzzle {
  const more = apart.map((bits, i) => (i === a || i === b ? bits.slice() : bits));
  setBit(more[a] as Bits, b);
  setBit(more[b] as Bits, a);
  return { origins, apart: more };
}
