import type { Citation, Claim, Hardness, Relation } from "../../domain/claim.ts";
import { STRENGTHS } from "../../domain/claim.ts";
import { DATING_LABELS } from "../../domain/datings.ts";
import type { EditKind } from "../../domain/edit-words.ts";
import { SEEN, SURENESS } from "../../domain/examination.ts";
import type { LeaningRole } from "../../domain/leaning-words.ts";
import { NEWS_KINDS } from "../../domain/live/told.ts";
import { AIDS, MOVES } from "../../domain/looking.ts";
import { PART_STATES } from "../../domain/part-state.ts";
import { PROBLEM_CODES } from "../../domain/problem.ts";
import { ALIKE_BY } from "../../domain/proposals/alike/alike.ts";
import { DISPUTE_OUTCOMES, DISPUTE_STATES } from "../../domain/proposals/dispute.ts";
import { PROPOSAL_KINDS, PROPOSAL_STATES } from "../../domain/proposals/proposal.ts";
import { VERDICTS } from "../../domain/proposals/review.ts";
import { STEPS, type Step } from "../../domain/proposals/step.ts";
import { SHIFT_KINDS } from "../../domain/shift-words.ts";
import { TERM_KINDS } from "../../domain/term.ts";
import { DATE_PRIORS } from "../../domain/weighing/odds.ts";
import { STAGES } from "../../domain/weighing/weighing.ts";
import type { PlainBuilder } from "../builder.ts";

/** Names of a union, each once: a missing or a surplus one does not compile. */
const eachOf = <Name extends string>(names: Record<Name, true>) => Object.keys(names) as Name[];

const RELATIONS = eachOf<Relation>({
  requires: true,
  "typical of": true,
  introduced: true,
  attested: true,
  "common from": true,
  "common until": true,
  discontinued: true,
  current: true,
  active: true,
  "confined to": true,
  "not found in": true,
  "spread to": true,
  indicates: true,
  "void when": true,
});
const HARDNESS = eachOf<Hardness>({ physical: true, practice: true });
const STATUSES = eachOf<Claim["status"]>({ accepted: true, proposed: true, rejected: true });
const EDIT_KINDS = eachOf<EditKind>({ added: true, changed: true, withdrawn: true });
const LEANING_ROLES = eachOf<LeaningRole>({
  contradiction: true,
  unusual: true,
  agreement: true,
  silence: true,
  "rule-out": true,
  sign: true,
});
const BASES = eachOf<Citation["basis"]>({ published: true, "common practice": true, "from memory": true });

const STEP_NAMES = Object.keys(STEPS) as readonly Step[];

/** `typical of` is TYPICAL_OF in the schema and `typical of` everywhere else. */
function named<Value extends string>(values: readonly Value[]) {
  const entries = values.map((value) => [value.toUpperCase().replaceAll(/[ -]/g, "_"), { value }] as const);
  return Object.fromEntries(entries) as Record<string, { value: Value }>;
}

/** The closed lists of the field. */
export const addEnums = (b: PlainBuilder) => ({
  stage: b.enumType("WeighingStage", { values: named(STAGES) }),
  datePrior: b.enumType("DatePrior", { values: named(DATE_PRIORS) }),
  termKind: b.enumType("TermKind", { values: named(TERM_KINDS) }),
  move: b.enumType("Move", { values: named(MOVES) }),
  aid: b.enumType("Aid", { values: named(AIDS) }),
  relation: b.enumType("Relation", { values: named(RELATIONS) }),
  strength: b.enumType("Strength", { values: named(STRENGTHS) }),
  hardness: b.enumType("Hardness", { values: named(HARDNESS) }),
  claimStatus: b.enumType("ClaimStatus", { values: named(STATUSES) }),
  basis: b.enumType("Basis", { values: named(BASES) }),
  partState: b.enumType("PartState", { values: named(PART_STATES) }),
  datingLabel: b.enumType("DatingLabel", { values: named(DATING_LABELS) }),
  seen: b.enumType("Seen", { values: named(SEEN) }),
  sureness: b.enumType("Sureness", { values: named(SURENESS) }),
  editKind: b.enumType("EditKind", { values: named(EDIT_KINDS) }),
  shiftKind: b.enumType("ShiftKind", { values: named(SHIFT_KINDS) }),
  proposalKind: b.enumType("ProposalKind", { values: named(PROPOSAL_KINDS) }),
  alikeBy: b.enumType("AlikeBy", { values: named(ALIKE_BY) }),
  proposalState: b.enumType("ProposalState", { values: named(PROPOSAL_STATES) }),
  proposalStep: b.enumType("ProposalStep", { values: named(STEP_NAMES) }),
  verdict: b.enumType("Verdict", { values: named(VERDICTS) }),
  disputeState: b.enumType("DisputeState", { values: named(DISPUTE_STATES) }),
  disputeOutcome: b.enumType("DisputeOutcome", { values: named(DISPUTE_OUTCOMES) }),
  leaningRole: b.enumType("LeaningRole", { values: named(LEANING_ROLES) }),
  newsKind: b.enumType("NewsKind", { values: named(NEWS_KINDS) }),
  problemCode: b.enumType("ProblemCode", { values: named(PROBLEM_CODES) }),
});
