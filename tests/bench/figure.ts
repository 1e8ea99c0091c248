/** A figure that is no ratio: printed as it is measured, beside what it is meant to stay within if anything. */
export interface Figure {
  readonly what: string;
  readonly value: number;
  readonly unit: "KB" | "MB" | "ms" | "s";
  readonly atMost?: number;
}

/** Prints a figure in the form of the ratios. */
export function sayFigure({ what, value, unit, atMost }: Figure): void {
  const verdict = atMost === undefined ? "      " : value <= atMost ? "within" : "OVER  ";
  const limit = atMost === undefined ? "" : ` (at most ${atMost})`;
  console.log(`  ${verdict} ${value.toFixed(unit === "ms" ? 0 : 1)} ${unit}${limit}: ${what}`);
}

/** The value that this share of the numbers does not exceed (nearest rank). */
export const quantile = (numbers: readonly number[], share: number): number =>
  numbers.toSorted((a, b) => a - b)[Math.ceil(numbers.length * share) - 1] ?? Number.NaN;
