import type { Year } from "../../domain/years.ts";

/** A range of years in which an event fell. */
export type Range = readonly [Year, Year];

/** What is known of how a habit or thing came and went. Several slopes are several views of it, averaged; none: no slope. */
export interface CurveEvents {
  /** From its introduction to common use. */
  readonly rises: readonly (readonly [Range, Range])[];
  /** From its decline to its end. */
  readonly falls: readonly (readonly [Range, Range])[];
}

export interface Grid {
  readonly from: Year;
  readonly to: Year;
}

/** Midpoints of fifths: a range is read as equally probable throughout. */
const QUANTILES = [0.1, 0.3, 0.5, 0.7, 0.9];

/**
 * How common something was, year by year from 0 to 1 (docs/method.md): rising from its introduction to common use, falling from its
 * decline to its end, averaged over the ranges; `leak` at least, and `survival` of it after the end. By year - from.
 */
export function curve(
  { rises, falls }: CurveEvents,
  grid: Grid,
  { leak, survival }: { readonly leak: number; readonly survival: number },
): Float64Array {
  const rise = meanSlope(rises, grid);
  const fall = meanSlope(falls, grid);
  return Float64Array.from({ length: grid.to - grid.from + 1 }, (_, t) => {
    const up = rise?.[t] ?? 1;
    const down = 1 - (fall?.[t] ?? 0);
    return leak + (1 - leak) * up * (survival + (1 - survival) * down);
  });
}

/** Mean of straight slopes from 0 at a first event to 1 at a second, at least a year long, over all of both ranges. */
function meanSlope(slopes: CurveEvents["rises"], { from, to }: Grid): Float64Array | undefined {
  if (slopes.length === 0) return undefined;
  const values = new Float64Array(to - from + 1);
  const within = ([a, b]: Range, q: number): number => a + q * (b - a);
  for (const [first, second] of slopes)
    for (const p of QUANTILES)
      for (const q of QUANTILES) {
        const begin = within(first, p);
        addSlope(values, begin - from, Math.max(within(second, q), begin + 1) - from);
      }
  const count = slopes.length * QUANTILES.length ** 2;
  return values.map((value) => value / count);
}

function addSlope(values: Float64Array, begin: number, end: number): void {
  for (let t = Math.max(0, Math.ceil(begin)); t < values.length; t++)
    values[t] = (values[t] as number) + Math.min(1, (t - begin) / (end - begin));
}
