import type { Dated } from "../domain/claim.ts";
import { compareText } from "../domain/compare.ts";
import type { ClaimId, TermId } from "../domain/ids.ts";
import { applies } from "../domain/scope.ts";
import { introducedAt } from "./arrival.ts";
import { held, heldClaims, holdingOf } from "./atoms.ts";
import type { Bound } from "./bound.ts";
import { yearsSince } from "./claim-years.ts";
import type { Context } from "./context.ts";
import { hardnessOf, type KnownGraph } from "./known-graph.ts";

const ASSERT_EXISTENCE = ["introduced", "attested", "common from", "current", "active"];
/** These assert existence before their date, and nothing of how long before. */
const ASSERT_AN_END = ["common until", "discontinued"];

/** Name of the assumption that nobody anywhere had a term earlier than the graph says. */
const earliestAnywhere = (term: TermId): string => `earliestAnywhere(${term})`;

/**
 * The fall-back (E11), an assumption and marked as one: where nothing physical covers the place and the term has a physical
 * `introduced` somewhere, it was made nowhere before the earliest existence claimed anywhere. It rests on the assumption and the
 * claim that attains that year: a physical introduction before others, then the first by id. What went out of use somewhere before that
 * year shows that the assumption is false, so there is no bound; nor is there one by a claim that an exception voids here.
 */
export function earliestAnywhereBound(term: TermId, context: Context, graph: KnownGraph): Bound | undefined {
  const claimsOf = (relations: readonly string[]): readonly Dated[] =>
    graph.claimsOf(term).filter((claim): claim is Dated => relations.includes(claim.relation));
  const dated = claimsOf(ASSERT_EXISTENCE);
  const isVoid = (claim: ClaimId): boolean => context.exceptions.defeatsOf(claim).length > 0;
  const isFloor = (claim: Dated): boolean =>
    claim.relation === "introduced" && hardnessOf(claim) === "physical" && !isVoid(claim.id);
  if (!dated.some(isFloor) || isCovered(term, context, graph)) return undefined;

  const begins = dated.map((claim) => ({ claim, ...graph.yearsOf(claim).existsFrom }));
  const outer = Math.min(...begins.map((begin) => begin.outer));
  const inner = Math.min(...begins.map((begin) => begin.inner));
  const attaining = begins
    .filter((begin) => begin.outer === outer)
    .map(({ claim }) => claim)
    .sort((a, b) => Number(isFloor(b)) - Number(isFloor(a)) || compareText(a.id, b.id))[0]?.id;
  if (attaining === undefined || isVoid(attaining) || outer === Number.NEGATIVE_INFINITY) return undefined;
  if (claimsOf(ASSERT_AN_END).some((claim) => graph.yearsOf(claim).existsFrom.outer < outer))
    return undefined;
  const assumption = earliestAnywhere(term);
  return {
    kind: "bound",
    by: "fallback",
    hardness: "physical",
    outer: yearsSince(outer),
    inner: yearsSince(inner),
    held: holdingOf(held({ kind: "assumption", assumption }), heldClaims([attaining])),
    claims: [attaining],
    alternatives: [],
    assumption,
  };
}

/** Whether something physical says when the term began at the place, be it void here or not. */
const isCovered = (term: TermId, context: Context, graph: KnownGraph): boolean =>
  introducedAt(term, context, graph).length > 0 ||
  graph
    .claimsOf(term)
    .some(
      (claim) =>
        claim.relation === "active" &&
        hardnessOf(claim) === "physical" &&
        applies(claim.scope, context.where, graph.broader),
    );
