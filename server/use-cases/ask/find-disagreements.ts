import type { Revision } from "../../domain/revision.ts";
import type { Page, PageAsk, Store } from "../../ports/store.ts";
import { findAllDisagreements } from "../../reasoning/disagreements/find-all.ts";
import { type Disagreement, isRuleId, RULE_IDS, type RuleId } from "../../reasoning/disagreements/rule.ts";
import { RULE_WORDS, type RuleWords } from "../../reasoning/explain/disagreement-in-words.ts";
import { readGraph } from "./read-graph.ts";

/** A finding as data: the reasoning's own. */
export type FoundDisagreement = Disagreement;

interface Ports {
  readonly store: Store;
}

/** A rule in words, with how much it finds and among how many accepted claims. */
export interface RuleFound extends RuleWords {
  readonly id: RuleId;
  readonly count: number;
  readonly claimCount: number;
}

/** The rules in their order, with what they find on the newest revision. */
export async function listDisagreementRules(ports: Ports): Promise<readonly RuleFound[]> {
  const { found, claimCount } = await everythingFound(ports);
  return RULE_IDS.map((id) => ({ id, ...RULE_WORDS[id], count: found.get(id)?.length ?? 0, claimCount }));
}

/** What one rule finds on the newest revision, or all of them in their order; nothing for a rule that there is not. */
export async function findDisagreements(
  ports: Ports,
  rule: string | undefined,
  { first, after }: PageAsk,
): Promise<{ readonly page: Page<Disagreement>; readonly at: Revision["number"] | undefined }> {
  const { found, at } = await everythingFound(ports);
  const asked = rule === undefined ? RULE_IDS : [rule].filter(isRuleId);
  const all = asked.flatMap((id) => found.get(id) ?? []);
  const last = after === undefined ? -1 : all.findIndex(({ id }) => id === after);
  const from = after !== undefined && last === -1 ? all.length : last + 1;
  const rows = all.slice(from, from + first);
  const hasMore = from + first < all.length;
  return { page: { rows, cursors: rows.map(({ id }) => id), hasMore, total: all.length }, at };
}

interface Found {
  readonly at: Revision["number"] | undefined;
  readonly found: ReadonlyMap<RuleId, readonly Disagreement[]>;
  /** Accepted claims that were held against each other. */
  readonly claimCount: number;
}

/** By the hash of the revision, which stands for the whole graph: the same hash gives the same findings in any store. */
const kept = new Map<Revision["hash"], Promise<Found>>();
/** Revisions whose findings are kept in memory. */
const MOST_KEPT = 2;

async function everythingFound(ports: Ports): Promise<Found> {
  const revision = await ports.store.newestRevision();
  if (revision === undefined) return { at: undefined, found: new Map(), claimCount: 0 };
  const known = kept.get(revision.hash);
  if (known) return known;
  const finding = findOn(ports, revision.number);
  kept.set(revision.hash, finding);
  for (const hash of [...kept.keys()].slice(0, -MOST_KEPT)) kept.delete(hash);
  // What failed is looked for again by the next who asks.
  finding.catch(() => kept.delete(revision.hash));
  return finding;
}

async function findOn(ports: Ports, at: Revision["number"]): Promise<Found> {
  const { terms, claims } = await readGraph(ports, at);
  const claimCount = claims.filter(({ status }) => status === "accepted").length;
  return { at, found: findAllDisagreements(terms, claims), claimCount };
}
