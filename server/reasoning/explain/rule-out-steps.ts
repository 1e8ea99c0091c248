import type { ClaimId } from "../../domain/ids.ts";
import type { RuleOut } from "../../domain/report.ts";
import type { StepInWords } from "../../domain/report-words.ts";
import { assumptionInWords } from "./assumption-in-words.ts";
import { claimInWords } from "./claim-in-words.ts";
import type { ReportReader } from "./report-reader.ts";
import { stepsInWords } from "./steps-in-words.ts";

/**
 * The steps a rule-out rests on, and no others. What contradicts a finding can do so in several ways, and the finding's chain
 * tells one: where the rule-out rests on another, its claims and assumptions are told one by one.
 */
export function ruleOutSteps({ atoms, findings }: RuleOut, reader: ReportReader): readonly StepInWords[] {
  const claims = new Set(
    atoms.flatMap((atom) =>
      atom.kind === "claim" ? [atom.claim] : atom.kind === "rivals" ? atom.claims : [],
    ),
  );
  const assumed = atoms.flatMap((atom) =>
    atom.kind === "assumption" ? [assumptionInWords(atom.assumption, reader)] : [],
  );
  const isHeld = ({ claim, says, assumed: isAssumed }: StepInWords): boolean =>
    claim === undefined ? !isAssumed || assumed.includes(says) : claims.has(claim);
  const chains = findings.map((finding) => stepsInWords(reader.findingOf(finding)?.derivation, reader));
  const whole = chains.filter((steps) => steps.every(isHeld)).flat();
  const inChains = chains
    .flat()
    .flatMap(({ claim }) => (claim !== undefined && claims.has(claim) ? [claim] : []));
  return [
    ...whole,
    ...[...new Set([...inChains, ...claims])]
      .filter((claim) => !whole.some((step) => step.claim === claim))
      .map((claim): StepInWords => ({ depth: 0, says: sentenceOf(claim, reader), claim, assumed: false })),
    ...assumed
      .filter((says) => !whole.some((step) => step.says === says))
      .map((says): StepInWords => ({ depth: 0, says, assumed: true })),
  ];
}

function sentenceOf(id: ClaimId, reader: ReportReader): string {
  const claim = reader.claimOf(id);
  return claim === undefined ? id : claimInWords(claim, reader.labelOf);
}
