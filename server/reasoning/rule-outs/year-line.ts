import type { Year, Years } from "../../domain/years.ts";

/** A set of years as bits, one for each run of a line. */
export type YearBits = Uint32Array;

/**
 * The years up to the last one that counts, cut wherever one of some sets begins or ends: within a run no two years can be told
 * apart, so sets become bits and meeting them becomes `and`.
 */
export interface YearLine {
  /** Runs in it. */
  readonly runs: number;
  /** Bits of one of the sets the line was cut by. */
  readonly bitsOf: (years: Years) => YearBits;
  /** All runs. */
  readonly all: YearBits;
}

/** Cuts the years up to `until` by some sets, none of which has a later year. */
export function cutLine(sets: readonly Years[], until: Year): YearLine {
  const starts = new Set<Year>([Number.NEGATIVE_INFINITY]);
  for (const years of sets)
    for (const [first, last] of years) {
      starts.add(first);
      if (last < until) starts.add(last + 1);
    }
  const sorted = [...starts].sort((a, b) => a - b);
  const runOf = new Map(sorted.map((year, run) => [year, run]));
  const runs = sorted.length;
  const bitsOf = (years: Years): YearBits => {
    const bits = new Uint32Array((runs + 31) >> 5);
    for (const [first, last] of years) {
      const end = last < until ? (runOf.get(last + 1) as number) : runs;
      for (let run = runOf.get(first) as number; run < end; run++) setBit(bits, run);
    }
    return bits;
  };
  return { runs, bitsOf, all: bitsOf([[Number.NEGATIVE_INFINITY, until]]) };
}

function setBit(bits: YearBits, run: number): void {
  bits[run >> 5] = (bits[run >> 5] as number) | (1 << (run & 31));
}

export const hasBit = (bits: YearBits, run: number): boolean =>
  ((bits[run >> 5] as number) & (1 << (run & 31))) !== 0;

/** Leaves in `bits` what is in `others` too. */
export function keepCommon(bits: YearBits, others: YearBits): void {
  for (let word = 0; word < bits.length; word++)
    bits[word] = (bits[word] as number) & (others[word] as number);
}

/** Puts into `bits` what is in `others`. */
export function addAll(bits: YearBits, others: YearBits): void {
  for (let word = 0; word < bits.length; word++)
    bits[word] = (bits[word] as number) | (others[word] as number);
}

export const isNone = (bits: YearBits): boolean => bits.every((word) => word === 0);

/** Whether two sets share a run. */
export function meets(a: YearBits, b: YearBits): boolean {
  for (let word = 0; word < a.length; word++)
    if (((a[word] as number) & (b[word] as number)) !== 0) return true;
  return false;
}
