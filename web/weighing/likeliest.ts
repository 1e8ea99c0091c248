import type { PartId } from "#server/domain/ids.ts";
import type { Dates, PartDates } from "#server/domain/weighing/dates.ts";
import type { StateOdds } from "#server/domain/weighing/odds.ts";

export type State = keyof StateOdds;
export const STATES: readonly State[] = ["original", "later", "reused", "reworked"];

/** The dates of the group that a part belongs to. */
export const datesOf = (dates: Dates | undefined, part: PartId | undefined): PartDates | undefined =>
  dates?.parts.find(({ parts }) => part !== undefined && parts.includes(part));

/** The likeliest state; of ties the first in the order original, later, reused, reworked. */
export const likeliest = (odds: StateOdds): State =>
  STATES.reduce((best, state) => (odds[state] > odds[best] ? state : best));

/** Within this of the prior, nothing seen bears on a part. */
const ALIKE = 0.005;

/** What a part most probably is; `untold` where nothing seen bears on it or nothing is worked out. */
export function likeliestOf(dates: Dates | undefined, parts: readonly PartId[]): State | "untold" {
  const found = datesOf(dates, parts[0]);
  if (found === undefined) return "untold";
  const tells = STATES.some((state) => Math.abs(found.odds[state] - found.prior[state]) >= ALIKE);
  return tells ? likeliest(found.odds) : "untold";
}
