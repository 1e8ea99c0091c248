import type { Finding } from "#server/domain/report.ts";
import { type Year, yearsFromJson } from "#server/domain/years.ts";
import type { StripGap } from "./strip-row.ts";

/**
 * The stretch between the claimed years and the nearest years of a contradictory finding: of its possible years where
 * it cannot be, of its usual years where it is only out of its time. None where no year is left, or no contradiction.
 */
export function findGap(
  finding: Pick<Finding, "label" | "hardness" | "possible" | "usual">,
  claimed: readonly [Year | null, Year | null],
): StripGap | undefined {
  if (finding.label !== "contradictory") return undefined;
  const years = yearsFromJson((finding.hardness === "physical" ? finding.possible : finding.usual).outer);
  const first = claimed[0] ?? Number.NEGATIVE_INFINITY;
  const last = claimed[1] ?? Number.POSITIVE_INFINITY;
  let nearest: StripGap | undefined;
  for (const [from, to] of years) {
    const gap = from > last ? { from: last, to: from } : to < first ? { from: first, to } : undefined;
    if (!gap || !Number.isFinite(gap.from) || !Number.isFinite(gap.to)) continue;
    if (!nearest || Math.abs(gap.to - gap.from) < Math.abs(nearest.to - nearest.from)) nearest = gap;
  }
  return nearest;
}
