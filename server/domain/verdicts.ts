import { compareText } from "./compare.ts";
import { holdsEverywhere } from "./holds-everywhere.ts";
import type { PartId } from "./ids.ts";
import type { Finding, PartSummary, Report, RuleOut } from "./report.ts";
import type { PartOdds } from "./weighing/dates.ts";
import { type LikelyState, likelyStateOf } from "./weighing/likely-state.ts";

/** What a finding says of the claimed years, without what it rests on. */
export type FindingVerdict = Pick<
  Finding,
  "label" | "hardness" | "direction" | "gapYears" | "certain" | "marginal" | "reason"
>;
/** A conclusion, whatever it rests on. */
export interface RuleOutVerdict extends Pick<RuleOut, "hardness" | "against" | "findings" | "parts"> {
  /** Wherever the claim leaves it open that the piece is from. */
  readonly everywhere: boolean;
}

/** What a report, and the odds of its parts, come to: small enough to be kept of every stored examination. */
export interface Verdicts {
  /** False where the piece cannot be examined: it names what the graph does not know. The lists are empty then. */
  readonly fits: boolean;
  /** By id. */
  readonly findings: readonly { readonly id: string; readonly verdict: FindingVerdict }[];
  /** Each conclusion once, as texts of `RuleOutVerdict`, sorted. */
  readonly ruleOuts: readonly string[];
  /** In the order of the piece. */
  readonly parts: readonly { readonly part: PartId; readonly speaks: PartSummary["speaks"] }[];
  /** What each part most probably is, as coarsely as words tell it; of parts that are together the first stands for all. */
  readonly states: readonly { readonly part: PartId; readonly likely: LikelyState }[];
}

export const UNFIT: Verdicts = { fits: false, findings: [], ruleOuts: [], parts: [], states: [] };

/** Equal verdicts are one object: there are few beside the examinations that share them. */
const shared = new Map<string, FindingVerdict>();
const MOST_SHARED = 20_000;

/** What of a report the verdicts are read from. */
export interface Telling {
  readonly attribution: Pick<Report["attribution"], "places">;
  readonly findings: readonly (FindingVerdict & Pick<Finding, "id">)[];
  readonly ruleOuts: Report["ruleOuts"];
  readonly parts: readonly Pick<PartSummary, "part" | "speaks">[];
}

export function verdictsOf(told: Telling, odds: readonly PartOdds[]): Verdicts {
  return { ...reportVerdictsOf(told), states: likelyStatesOf(odds) };
}

/** The part of them that follows from a report. */
export function reportVerdictsOf(told: Telling): Omit<Verdicts, "states"> {
  const ruleOuts = told.ruleOuts.map((ruleOut) => JSON.stringify(ruleOutVerdictOf(ruleOut, told)));
  return {
    fits: true,
    findings: told.findings
      .map((finding) => ({ id: finding.id, verdict: verdictOf(finding) }))
      .sort((a, b) => compareText(a.id, b.id)),
    ruleOuts: [...new Set(ruleOuts)].sort(),
    parts: told.parts.map(({ part, speaks }) => ({ part, speaks })),
  };
}

/** The part of them that follows from the odds. */
export const likelyStatesOf = (odds: readonly PartOdds[]): Verdicts["states"] =>
  odds.flatMap(({ parts: [part], odds: of, prior }) =>
    part === undefined ? [] : [{ part, likely: likelyStateOf(of, prior) }],
  );

function verdictOf(finding: FindingVerdict): FindingVerdict {
  const { label, hardness, direction, gapYears, certain, marginal, reason } = finding;
  const verdict = { label, hardness, direction, gapYears, certain, marginal, reason };
  const text = JSON.stringify(verdict);
  const known = shared.get(text);
  if (known !== undefined) return known;
  if (shared.size >= MOST_SHARED) shared.clear();
  const kept = JSON.parse(text) as FindingVerdict;
  shared.set(text, kept);
  return kept;
}

export const ruleOutVerdictOf = (
  ruleOut: RuleOut,
  told: Pick<Telling, "attribution" | "findings">,
): RuleOutVerdict => ({
  ...{ hardness: ruleOut.hardness, against: ruleOut.against },
  ...{ findings: ruleOut.findings, parts: ruleOut.parts },
  everywhere: holdsEverywhere(ruleOut, told),
});
