import type { Year } from "#server/domain/years.ts";
import { makeYearAxis, type YearAxis } from "#web/shared/years/year-axis.ts";
import type { StripGroup } from "./strip-row.ts";

/** How far before the claim the axis goes at most; what begins earlier is drawn as going on. */
const MOST_BEFORE = 220;
/** How far beyond what is stated, and how far after a claim at least. */
const AIR = 12;
const AFTER_CLAIM = 60;

/**
 * The axis all strips share: the claimed years, and every stated year of a strip within reason. It ends at the year of
 * the examination, since nothing on the piece is later. A claim without a beginning moves nothing.
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
  const [claimedFrom, claimedTo] = claimed;
  if (claimedFrom === null) {
    if (stated.length === 0) return makeYearAxis(1650, 1900);
    return makeYearAxis(Math.min(...stated) - AIR, Math.min(examined, Math.max(...stated) + AIR));
  }
  const least = Math.min(claimedFrom, ...stated) - AIR;
  const most = Math.max(claimedFrom + AFTER_CLAIM, claimedTo ?? claimedFrom, ...stated) + AIR;
  return makeYearAxis(
    Math.max(least, claimedFrom - MOST_BEFORE),
    Math.max(Math.min(most, examined), claimedFrom + AIR),
  );
}
