import type { Year } from "../../domain/years.ts";

/** Four events of a habit or thing, each within a range of years; a missing one never comes, or was always there. */
export interface CurveEvents {
  readonly introduced?: readonly [Year, Year];
  readonly common?: readonly [Year, Year];
  readonly declining?: readonly [Year, Year];
  readonly gone?: readonly [Year, Year];
}

/** Midpoints of fifths: a range is read as equally probable throughout. */
const QUANTILES = [0.1, 0.3, 0.5, 0.7, 0.9];

/**
 * How common something was, year by year from 0 to 1 (docs/method.md): rising from its introduction to common use, falling from its
 * decline to its end, averaged over the ranges; `leak` at least, and `survival` of it after the end. By year - from.
 */
export function curve(
  events: CurveEvents,
  grid: { readonly from: Year; readonly to: Year },
  { leak, survival }: { readonly leak: number; readonly survival: number },
): Float64Array {
  const rise = slope(events.introduced, events.common, grid);
  const fall = slope(events.declining, events.gone, grid);
  return Float64Array.from({ length: grid.to - grid.from + 1 }, (_, t) => {
    const up = rise?.[t] ?? 1;
    const down = 1 - (fall?.[t] ?? 0);
    return leak + (1 - leak) * up * (survival + (1 - survival) * down);
  });
}

/** Mean over both ranges of a straight slope from 0 at the first event to 1 at the second, at least a year long. */
function slope(
  first: readonly [Year, Year] | undefined,
  second: readonly [Year, Year] | undefined,
  { from, to }: { readonly from: Year; readonly to: Year },
): Float64Array | undefined {
  if (first === undefined || second === undefined) return undefined;
  const values = new Float64Array(to - from + 1);
  const within = ([a, b]: readonly [Year, Year], q: number): number => a + q * (b - a);
  for (const p of QUANTILES)
    for (const q of QUANTILES) {
      const begin = within(first, p);
      const end = Math.max(within(second, q), begin + 1);
      for (let t = 0; t < values.length; t++)
        values[t] =
          (values[t] as number) + Math.min(1, Math.max(0, (from + t - begin) / (end - begin)));
    }
  const count = QUANTILES.length ** 2;
  return values.map((value) => value / count);
}
