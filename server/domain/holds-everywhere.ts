import type { Finding, Report, RuleOut } from "./report.ts";

/**
 * Whether a rule-out holds wherever the claim leaves it open that the piece is from: as it stands, or together with others
 * that contradict the same finding at the other places.
 */
export function holdsEverywhere(
  { places, findings, hardness }: RuleOut,
  report: {
    readonly attribution: Pick<Report["attribution"], "places">;
    readonly findings: readonly Pick<Finding, "id" | "label" | "hardness">[];
  },
): boolean {
  if (places.length === 0 || places.length >= report.attribution.places.length) return true;
  const [id, another] = findings;
  const finding = report.findings.find((one) => one.id === id);
  if (another !== undefined || finding?.label !== "contradictory") return false;
  return hardness === "practice" || finding.hardness === "physical";
}
