/** A number to six significant digits, as reports carry it. */
export const significant = (value: number): number => (value === 0 ? 0 : Number(value.toPrecision(6)));

/** Below this a weight is what rounding leaves of none. */
const LEAST_WEIGHT = 1e-9;

/** A weight to six significant digits; null where it is beyond the model, at probability 0 or 1. */
export function finiteWeight(log10: number): number | null {
  if (!Number.isFinite(log10)) return null;
  return Math.abs(log10) < LEAST_WEIGHT ? 0 : significant(log10);
}
