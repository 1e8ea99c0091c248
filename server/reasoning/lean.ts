import { canonicalJson } from "../domain/canonical-json.ts";
import type { ClaimId } from "../domain/ids.ts";
import { pickRuleOuts } from "../domain/pick-rule-outs.ts";
import type { Derivation, Finding, Report, RuleOut, Sign } from "../domain/report.ts";

/** A finding beside the same without the claim. */
export interface FindingLeaning {
  readonly now: Finding;
  readonly without: Finding;
  /** Its verdict or its years are others without the claim. Else something else holds it up as well. */
  readonly differs: boolean;
}

/** What of one examination leans on one claim. */
export interface Leaning {
  readonly findings: readonly FindingLeaning[];
  /** Of those told by themselves, those that no one finding tells already. */
  readonly ruleOuts: readonly { readonly now: RuleOut; readonly falls: boolean }[];
  /** A sign that the claim gives, or that it sets aside as an exception; nothing without the claim where it falls. */
  readonly signs: readonly { readonly now: Sign; readonly without?: Sign }[];
}

/**
 * What leans on a claim: findings that have a proof from it or would be others without it, and rule-outs and signs that
 * hold it.
 * `without` is the report on the same piece and the same neighbourhood but for the claim (`withoutClaim`).
 */
export function leanOn(claim: ClaimId, report: Report, without: Report): Leaning {
  const ruledOut = new Set(
    report.ruleOuts.filter((one) => isOfOne(one) && holds(claim, one)).flatMap((one) => one.findings),
  );
  const after = new Map(without.findings.map((finding) => [finding.id, finding]));
  const findings = report.findings.flatMap((now): FindingLeaning[] => {
    const then = after.get(now.id) ?? now;
    const differs = verdictOf(now) !== verdictOf(then);
    return differs || restsOn(claim, now) || ruledOut.has(now.id) ? [{ now, without: then, differs }] : [];
  });
  const contradicted = new Set(
    findings.filter(({ now }) => now.label === "contradictory").map(({ now }) => now.id),
  );
  const isTold = (one: RuleOut) => isOfOne(one) && one.findings.every((finding) => contradicted.has(finding));
  const still = new Set(without.ruleOuts.map(sameRuleOut));
  const told = (["physical", "practice"] as const).flatMap(
    (hard) => pickRuleOuts(report.ruleOuts, hard).told,
  );
  return {
    findings,
    ruleOuts: told
      .filter((ruleOut) => holds(claim, ruleOut) && !isTold(ruleOut))
      .map((now) => ({ now, falls: !still.has(sameRuleOut(now)) })),
    signs: report.signs
      .filter((sign) => givesOrSetsAside(claim, sign))
      .map((now) => {
        const then = without.signs.find(
          (sign) => sign.observation === now.observation && sign.claim === now.claim,
        );
        return { now, ...(then === undefined ? {} : { without: then }) };
      }),
  };
}

/** What a finding says of the claimed years, and of which years. */
const verdictOf = ({ label, hardness, direction, gapYears, certain, marginal, reason, ...rest }: Finding) =>
  canonicalJson(
    [
      [label, hardness, direction, gapYears, certain, marginal, reason],
      [rest.possible, rest.usual],
    ].map((of) => of.map((value) => value ?? null)),
  );

const restsOn = (claim: ClaimId, { support, derivation, setAside }: Finding): boolean =>
  support.claims.includes(claim) ||
  (derivation !== undefined && names(claim, derivation)) ||
  setAside.some(({ by }) => by === claim);

const names = (claim: ClaimId, node: Derivation): boolean =>
  node.kind === "claim"
    ? node.claim === claim
    : node.kind !== "told" && node.from.some((below) => names(claim, below));

/** One finding against what is claimed. */
const isOfOne = ({ against, findings }: RuleOut): boolean =>
  against === "attribution" && findings.length === 1;

const holds = (claim: ClaimId, { atoms }: RuleOut): boolean =>
  atoms.some(
    (atom) =>
      (atom.kind === "claim" && atom.claim === claim) ||
      (atom.kind === "rivals" && atom.claims.includes(claim)),
  );

/** The same conclusion from the same findings, whatever it rests on. */
const sameRuleOut = ({ hardness, against, findings, parts }: RuleOut): string =>
  canonicalJson([hardness, against, findings, parts]);

const givesOrSetsAside = (claim: ClaimId, sign: Sign): boolean =>
  sign.claim === claim || sign.because.some(({ exception }) => exception === claim);
