import type { Year } from "#server/domain/years.ts";

/** A scale of years across a drawing. Places are percent of its width, so that a drawing needs no measuring. */
export interface YearAxis {
  readonly first: Year;
  readonly last: Year;
  /** Years that get a line and a label. */
  readonly ticks: readonly Year[];
  /** Place of a year, held within the axis; null is the nearer edge asked for. */
  readonly at: (year: Year | null, edge?: "first" | "last") => number;
}

const stepFor = (years: number): number => {
  if (years <= 70) return 10;
  if (years <= 170) return 25;
  return years <= 420 ? 50 : 100;
};

/** An axis from `first` to `last`, widened to whole steps. */
export function makeYearAxis(first: Year, last: Year): YearAxis {
  const step = stepFor(last - first);
  const from = Math.floor(first / step) * step;
  const to = Math.max(Math.ceil(last / step) * step, from + step);
  const ticks: Year[] = [];
  for (let year = from; year <= to; year += step) ticks.push(year);
  const at = (year: Year | null, edge: "first" | "last" = "first") => {
    const held = Math.min(to, Math.max(from, year ?? (edge === "first" ? from : to)));
    return ((held - from) / (to - from)) * 100;
  };
  return { first: from, last: to, ticks, at };
}

/** An axis that shows all of `years` with some air; where there are none, the years most furniture here is of. */
export function axisAround(years: readonly (Year | null)[], air = 20): YearAxis {
  const finite = years.filter((year): year is Year => year !== null && Number.isFinite(year));
  if (finite.length === 0) return makeYearAxis(1650, 1900);
  return makeYearAxis(Math.min(...finite) - air, Math.max(...finite) + air);
}
