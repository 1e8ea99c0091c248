/** A number to six significant digits, as reports carry it. */
export const significant = (value: number): number => (value === 0 ? 0 : Number(value.toPrecision(6)));
