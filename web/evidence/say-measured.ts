interface Measured {
  readonly number: number | null;
  readonly from: number | null;
  readonly to: number | null;
  readonly words: string | null;
  readonly unit: string | null;
}

/** A value as it is read: “4.9 %”, “19 to 22.2 mm”, a formula as it stands. The word “year” is not said after a year. */
export function sayMeasured({ number, from, to, words, unit }: Measured): string {
  const value = words ?? (number === null ? `${from} to ${to}` : `${number}`);
  return unit === null || unit === "year" ? value : `${value} ${unit}`;
}
