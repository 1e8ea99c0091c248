import type { YearOdds } from "#server/domain/weighing/dates.ts";
import type { YearAxis } from "#web/shared/years/year-axis.ts";

/** Height of a curve in its own units; it is stretched to the row. */
export const CURVE_HIGH = 100;

const round = (value: number): string => String(Math.round(value * 100) / 100);

/** What a curve has at a year, 0 outside its years. */
const oddsAt = ({ from, step, odds }: YearOdds, year: number): number =>
  odds[Math.floor((year - from) / step)] ?? 0;

/**
 * The probability of each year as the outline of an area on the axis, percent across, 0 to 100 from the top down to the ground. Each
 * curve has its own height: the likeliest year within the axis, or beyond it, reaches the top.
 */
export function curvePath(curve: YearOdds, axis: Pick<YearAxis, "first" | "last" | "at">): string {
  const top = Math.max(...curve.odds);
  if (!(top > 0)) return "";
  const points: string[] = [];
  let before: number | undefined;
  for (let year = axis.first; year <= axis.last; year += curve.step) {
    const high = CURVE_HIGH * (1 - oddsAt(curve, year) / top);
    const x = axis.at(year);
    // A step, not a slope: a year is as likely as it is from its beginning to its end.
    if (before === undefined || high !== before || year + curve.step > axis.last)
      points.push(
        ...(before === undefined ? [] : [`L${round(x)} ${round(before)}`]),
        `L${round(x)} ${round(high)}`,
      );
    before = high;
  }
  return `M${round(axis.at(axis.first))} ${CURVE_HIGH}${points.join("")}L${round(axis.at(axis.last))} ${CURVE_HIGH}Z`;
}

/** Years wider than this together say nothing that a person would call a date. */
const WIDEST = 150;

/** Whether the years that hold 95 % are too many to date anything. */
export const isUndetermined = ({ credible }: Pick<YearOdds, "credible">): boolean =>
  credible.years.reduce((sum, [first, last]) => sum + Number(last) - Number(first) + 1, 0) > WIDEST;
