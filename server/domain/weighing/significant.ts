/** A number to six significant digits, as reports carry it. */
export const significant = (value: number): number => (value === 0 ? 0 : Number(value.toPrecision(6)));

/** A weight to six significant digits; null where it is beyond the model, at probability 0 or 1. */
export const finiteWeight = (log10: number): number | null =>
  Number.isFinite(log10) ? significant(log10) : null;
