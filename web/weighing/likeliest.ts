import type { PartId } from "#server/domain/ids.ts";
import type { PartState } from "#server/domain/part-state.ts";
import type { Dates, PartDates } from "#server/domain/weighing/dates.ts";
import { likeliestState, tellsOfState } from "#server/domain/weighing/likely-state.ts";

/** The dates of the group that a part belongs to. */
export const datesOf = (dates: Dates | undefined, part: PartId | undefined): PartDates | undefined =>
  dates?.parts.find(({ parts }) => part !== undefined && parts.includes(part));

/** What a part most probably is; `untold` where nothing seen bears on it or nothing is worked out. */
export function likeliestOf(dates: Dates | undefined, parts: readonly PartId[]): PartState | "untold" {
  const found = datesOf(dates, parts[0]);
  if (found === undefined) return "untold";
  return tellsOfState(found.odds, found.prior) ? likeliestState(found.odds) : "untold";
}
