import type { Revision } from "../../domain/revision.ts";
import type { Page, PageAsk } from "../../ports/store.ts";
import { type Disagreement, isRuleId, RULE_IDS, type RuleId } from "../../reasoning/disagreements/rule.ts";
import { RULE_WORDS, type RuleWords } from "../../reasoning/explain/disagreement-in-words.ts";
import type { Surveys } from "./surveys/open-surveys.ts";
import { surveyedSoon } from "./surveys/surveyed-soon.ts";

/** A finding as data: the reasoning's own. */
export type FoundDisagreement = Disagreement;

interface Ports {
  readonly surveys: Surveys;
}

/** A rule in words, with how much it finds and among how many accepted claims, on which revision. */
export interface RuleFound extends RuleWords {
  readonly id: RuleId;
  readonly count: number;
  readonly claimCount: number;
  /** 0 where there is none yet. */
  readonly revision: Revision["number"];
}

/** The rules in their order, with what they find on the newest revision; undefined while that is still being made. */
export async function listDisagreementRules(ports: Ports): Promise<readonly RuleFound[] | undefined> {
  const soon = await surveyedSoon(ports.surveys.disagreements());
  if (soon === undefined) return undefined;
  const { what: survey, at: revision } = soon;
  const claimCount = survey.claimCount();
  return RULE_IDS.map((id) => ({
    ...{ id, ...RULE_WORDS[id], claimCount, revision },
    count: survey.found(id).length,
  }));
}

/**
 * What one rule finds on the newest revision, or all of them in their order; nothing for a rule that there is not. Undefined
 * while it is still being made.
 */
export async function findDisagreements(
  ports: Ports,
  rule: string | undefined,
  { first, after }: PageAsk,
): Promise<{ readonly page: Page<Disagreement>; readonly at: Revision["number"] } | undefined> {
  const soon = await surveyedSoon(ports.surveys.disagreements());
  if (soon === undefined) return undefined;
  const { what: survey, at } = soon;
  const asked = rule === undefined ? RULE_IDS : [rule].filter(isRuleId);
  const all = asked.flatMap((id) => survey.found(id));
  const last = after === undefined ? -1 : all.findIndex(({ id }) => id === after);
  const from = after !== undefined && last === -1 ? all.length : last + 1;
  const rows = all.slice(from, from + first);
  const hasMore = from + first < all.length;
  return { page: { rows, cursors: rows.map(({ id }) => id), hasMore, total: all.length }, at };
}
