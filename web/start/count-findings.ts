import { countSigns } from "#server/domain/count-signs.ts";
import type { Report } from "#server/domain/report.ts";
import { speaksOfChange } from "#server/domain/speaks-of-change.ts";

export interface FindingCounts {
  /** Cannot be of the claimed years. */
  readonly cannot: number;
  /** Are out of their time, and not impossible. */
  readonly unusual: number;
  readonly agree: number;
  /** Were seen and say nothing of the date. */
  readonly silent: number;
  /** Signs of alteration that stand; those of age alone are none. */
  readonly signs: number;
}

/** What the things seen on a piece say of its claimed years, counted. */
export function countFindings({ findings, signs }: Pick<Report, "findings" | "signs">): FindingCounts {
  const seen = findings.filter((finding) => finding.observation !== undefined && finding.seen === "present");
  const contradictory = seen.filter((finding) => finding.label === "contradictory");
  const cannot = contradictory.filter((finding) => finding.hardness === "physical").length;
  return {
    cannot,
    unusual: contradictory.length - cannot,
    agree: seen.filter((finding) => finding.label === "consistent").length,
    silent: seen.filter((finding) => finding.label === "silent").length,
    signs: countSigns(signs.filter((sign) => sign.standing === "stands" && speaksOfChange(sign))),
  };
}
