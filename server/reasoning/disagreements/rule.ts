import type { Dated } from "../../domain/claim.ts";
import type { ClaimId, SourceId, TermId } from "../../domain/ids.ts";
import type { Year } from "../../domain/years.ts";
import type { Evidence } from "./evidence.ts";

export const RULE_IDS = [
  "attested-before-introduced",
  "common-before-introduced",
  "narrower-before-wider",
  "rivals",
  "spread-in-a-circle",
  "one-source",
] as const;
export type RuleId = (typeof RULE_IDS)[number];

export const isRuleId = (text: string): text is RuleId => RULE_IDS.some((rule) => rule === text);

/** What a rule found, as data. */
export interface Disagreement {
  /** The rule, then what it is about: one finding has one id on every revision that has it. */
  readonly id: string;
  readonly rule: RuleId;
  /** What the claims are about: their subject, or the region. */
  readonly term: TermId;
  /** In the order in which the argument runs. */
  readonly claims: readonly ClaimId[];
  /** Of rivals: what they disagree on. */
  readonly relation?: Dated["relation"];
  /** Where it happens, if a claim says where. */
  readonly region?: TermId;
  readonly source?: SourceId;
  /** How far apart the claims are at the least; of a circle, the years it takes at the least. None where an end is open. */
  readonly years?: Year;
}

/** One kind of disagreement. What it means and what to do about it stands in explain/disagreement-in-words.ts. */
export interface DisagreementRule {
  readonly id: RuleId;
  readonly find: (evidence: Evidence) => readonly Disagreement[];
}
