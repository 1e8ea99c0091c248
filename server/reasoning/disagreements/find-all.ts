import type { Claim } from "../../domain/claim.ts";
import { compareIds, firstDifference } from "../../domain/compare.ts";
import type { TermId } from "../../domain/ids.ts";
import type { Term } from "../../domain/term.ts";
import { indexEvidence } from "./evidence.ts";
import { oneSource } from "./one-source.ts";
import type { Disagreement, RuleId } from "./rule.ts";
import { DISAGREEMENT_RULES } from "./rules.ts";

/** What each rule finds in a whole graph, in the order of the rules; the farthest apart first, then by id. */
export function findAllDisagreements(
  terms: readonly Term[],
  claims: readonly Claim[],
): ReadonlyMap<RuleId, readonly Disagreement[]> {
  const evidence = indexEvidence(terms, claims);
  return new Map(DISAGREEMENT_RULES.map(({ id, find }) => [id, [...find(evidence)].sort(byYearsApart)]));
}

/** What the rules about a subject find among the claims of some subjects; the terms are those named, with all broader ones. */
export const findAboutSubjects = (
  terms: readonly Term[],
  claims: readonly Claim[],
): readonly Disagreement[] => {
  const evidence = indexEvidence(terms, claims);
  return DISAGREEMENT_RULES.filter(({ id }) => id !== "one-source").flatMap(({ find }) => find(evidence));
};

/** What the claims of a region find if they name one source alone. Claims that do not say it of the region are passed over. */
export const findOneSource = (region: TermId, claims: readonly Claim[]): Disagreement | undefined =>
  oneSource.find(indexEvidence([], claims)).find((found) => found.region === region);

/** The farthest apart first, then by id. */
export const byYearsApart = (a: Disagreement, b: Disagreement): number =>
  firstDifference(weight(b) - weight(a), b.claims.length - a.claims.length, compareIds(a, b));

/** What cannot be counted stands before all that can, beyond any year a date can be written in. */
const weight = ({ rule, years }: Disagreement): number => years ?? (rule === "one-source" ? 0 : 10_000);
