import type { Hardness } from "./claim.ts";
import type { RuleOut } from "./report.ts";

/** Rule-outs of one hardness as they are told. */
export interface PickedRuleOuts {
  /** Each says something of its own. */
  readonly told: readonly RuleOut[];
  /** Each only joins a finding that is told already to another: shown on demand. */
  readonly following: readonly RuleOut[];
}

/**
 * Parts the rule-outs of one hardness into those that are told and those that follow. A clash of two findings follows
 * where one of them alone rules the claim out, at this hardness or a harder one. Nothing is left out.
 */
export function pickRuleOuts(ruleOuts: readonly RuleOut[], hardness: Hardness): PickedRuleOuts {
  const isAlone = (ruleOut: RuleOut) => ruleOut.findings.length === 1 && ruleOut.against === "attribution";
  const hardAlone = new Set(
    ruleOuts.filter((one) => one.hardness === "physical" && isAlone(one)).flatMap((one) => one.findings),
  );
  const softAlone = new Set(ruleOuts.filter(isAlone).flatMap((one) => one.findings));
  const told: RuleOut[] = [];
  const following: RuleOut[] = [];
  for (const ruleOut of ruleOuts) {
    if (ruleOut.hardness !== hardness) continue;
    const known = hardness === "physical" || isAlone(ruleOut) ? hardAlone : softAlone;
    const follows =
      ruleOut.findings.some((finding) => known.has(finding)) &&
      !(isAlone(ruleOut) && ruleOut.hardness === "physical");
    (follows ? following : told).push(ruleOut);
  }
  return { told, following };
}
