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

/** How far something had come, and how far it had gone, from 0 to 1, by year - from; undefined where it always was, or stayed. */
export interface Slopes {
  readonly rise: Float64Array | undefined;
  readonly fall: Float64Array | undefined;
}

/** Midpoints of fifths: a range is read as equally probable throughout. */
const QUANTILES = [0.1, 0.3, 0.5, 0.7, 0.9];

/** The slopes of events, each averaged over its ranges. */
export const slopesOf = ({ rises, falls }: CurveEvents, grid: Grid): Slopes => ({
  rise: meanSlope(rises, grid),
  fall: meanSlope(falls, grid),
});

/**
 * How common something was, year by year from 0 to 1 (docs/method.md): rising from its introduction to common use, falling from its
 * decline to its end; `leak` at least, and `survival` of it after the end. By year - from.
 */
export function curve(
  { rise, fall }: Slopes,
  { from, to }: Grid,
  { leak, survival }: { readonly leak: number; readonly survival: number },
): Float64Array {
  const values = new Float64Array(to - from + 1);
  for (let t = 0; t < values.length; t++) {
    const up = rise ? (rise[t] as number) : 1;
    const down = fall ? 1 - (fall[t] as number) : 1;
    values[t] = leak + (1 - leak) * up * (survival + (1 - survival) * down);
  }
  return values;
}

/** Mean of straight slopes from 0 at a first event to 1 at a second, at least a year long, over all of both ranges. */
function meanSlope(slopes: CurveEvents["rises"], { from, to }: Grid): Float64Array | undefined {
  if (slopes.length === 0) return undefined;
  const values = new Float64Array(to - from + 1);
  /** Slopes that reach 1 in each year. */
  const through = new Float64Array(values.length + 1);
  const within = ([a, b]: Range, q: number): number => a + q * (b - a);
  for (const [first, second] of slopes)
    for (const p of QUANTILES)
      for (const q of QUANTILES) {
        const begin = within(first, p);
        addSlope(values, through, begin - from, Math.max(within(second, q), begin + 1) - from);
      }
  const count = slopes.length * QUANTILES.length ** 2;
  let full = 0;
  for (let t = 0; t < values.length; t++) {
    full += through[t] as number;
    values[t] = ((values[t] as number) + full) / count;
  }
  return values;
}

function addSlope(values: Float64Array, through: Float64Array, begin: number, end: number): void {
  const top = Math.min(values.length, Math.max(0, Math.ceil(end)));
  for (let t = Math.max(0, Math.ceil(begin)); t < top; t++)
    values[t] = (values[t] as number) + (t - begin) / (end - begin);
  through[top] = (through[top] as number) + 1;
}
