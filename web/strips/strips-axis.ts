import type { Year } from "#server/domain/years.ts";
import { makeYearAxis, type YearAxis } from "#web/shared/years/year-axis.ts";
import type { StripGroup } from "./strip-row.ts";

/** How far before the claim the axis goes at most; what begins earlier is drawn as going on. */
const MOST_BEFORE = 220;
const AIR = 12;

/**
 * The axis all strips share: the claimed years, and every stated year of a strip within reason. It ends at the year of
 * the examination, since nothing on the piece is later.
 */
export function stripsAxis(
  claimed: readonly [Year | null, Year | null],
  groups: readonly StripGroup[],
  examined: Year,
): YearAxis {
  const stated = groups
    .flatMap((group) => group.rows)
    .filter((row) => !row.isSilent)
    .flatMap((row) => [...row.possible, ...row.usual, ...row.ways.flatMap((way) => way.years)])
    .flat()
    .filter((year): year is Year => year !== null);
  const claim = claimed.filter((year): year is Year => year !== null);
  const all = [...stated, ...claim];
  if (all.length === 0) return makeYearAxis(1650, 1900);
  const middle = claim.length > 0 ? Math.min(...claim) : Math.min(...all);
  const first = Math.max(Math.min(...all) - AIR, middle - MOST_BEFORE);
  const last = Math.min(Math.max(...all, middle + 60) + AIR, Math.max(examined, middle + AIR));
  return makeYearAxis(first, last);
}
