import type { Finding } from "#server/domain/report.ts";

export interface FindingCounts {
  readonly against: number;
  readonly fits: number;
  readonly silent: number;
}

/** How many things seen speak against what is claimed, fit it, or say nothing of it. */
export function countFindings(findings: readonly Finding[]): FindingCounts {
  const observed = findings.filter((finding) => finding.observation !== undefined);
  const count = (label: Finding["label"]) => observed.filter((finding) => finding.label === label).length;
  return { against: count("contradictory"), fits: count("consistent"), silent: count("silent") };
}
