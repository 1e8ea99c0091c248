import type { Graph } from "#server/domain/change.ts";
import type { Claim } from "#server/domain/claim.ts";
import type { TermId } from "#server/domain/ids.ts";
import type { NeighbourhoodAsk } from "#server/domain/neighbourhood.ts";

/**
 * The neighbourhood as its definition reads, each part as a question that is asked of every term and claim. Slow;
 * shares nothing with the stores. Meant for graphs of a few dozen claims.
 */
export function neighbourhoodByDefinition(graph: Graph, ask: NeighbourhoodAsk) {
  const claims = [...graph.claims.values()];
  const terms = [...graph.terms.keys()] as TermId[];
  const isAtOrBelow = (term: TermId, top: TermId): boolean => {
    if (term === top) return true;
    const broader = graph.terms.get(term)?.broader;
    return broader !== undefined && isAtOrBelow(broader, top);
  };
  const isInScope = (region: TermId | undefined): boolean =>
    region === undefined ||
    ask.regions.length === 0 ||
    ask.regions.some((asked) => isAtOrBelow(region, asked) || isAtOrBelow(asked, region));
  const leads = (from: TermId, to: TermId): boolean =>
    claims.some(
      (claim) =>
        claim.relation === "requires" &&
        claim.status === "accepted" &&
        claim.subject === from &&
        isInScope(claim.scope.region) &&
        claim.ways.some((way) => way.includes(to)),
    );
  /** Whether some way of exactly `hops` steps leads from a seed to the term. */
  const isAt = (term: TermId, hops: number): boolean =>
    hops === 0
      ? ask.seeds.includes(term) && graph.terms.has(term)
      : terms.some((before) => leads(before, term) && isAt(before, hops - 1));
  const depthOf = (term: TermId): number | undefined =>
    Array.from({ length: ask.maxDepth + 1 }, (_, hops) => hops).find((hops) => isAt(term, hops));

  const depths = new Map(
    terms.sort().flatMap((term) => {
      const depth = depthOf(term);
      return depth === undefined ? [] : [[term, depth] as const];
    }),
  );
  const isIn = (claim: Claim): boolean => {
    if (claim.status !== "accepted") return false;
    if (claim.relation !== "void when") return depths.has(claim.subject);
    const of = graph.claims.get(claim.of);
    return of !== undefined && isIn(of);
  };
  const found = claims.filter(isIn).sort((a, b) => (a.id < b.id ? -1 : 1));
  const named = (term: TermId): boolean => depths.has(term) || found.some((claim) => mentions(claim, term));
  return {
    claims: found,
    depths,
    terms: terms
      .filter((term) => terms.some((below) => named(below) && isAtOrBelow(below, term)))
      .map((term) => graph.terms.get(term)),
    cutAt: [...depths.keys()].filter(
      (term) => depths.get(term) === ask.maxDepth && terms.some((to) => leads(term, to) && !depths.has(to)),
    ),
  };
}

/** Whether the id of a term stands anywhere in the claim: its text is searched, for ids that no other text holds. */
const mentions = (claim: Claim, term: TermId): boolean => JSON.stringify(claim).includes(`"${term}"`);
