import type { Dated, SpreadTo } from "../domain/claim.ts";
import type { ClaimId, TermId } from "../domain/ids.ts";
import { isWithin } from "../domain/region.ts";
import { applies } from "../domain/scope.ts";
import type { Year } from "../domain/years.ts";
import { claimsHeld, compareHoldings, type Holding, heldClaims, holdingBoth } from "./atoms.ts";
import type { Bound } from "./bound.ts";
import { yearsSince } from "./claim-years.ts";
import type { Context } from "./context.ts";
import { hardnessOf, type KnownGraph } from "./known-graph.ts";
import { nearest } from "./nearest-scope.ts";
import { boundsOf } from "./rivals.ts";

interface Arrival {
  readonly outer: Year;
  readonly inner: Year;
  readonly held: Holding;
}

/**
 * When a term can have come to the place by the claims of how long it took to spread (E10): the earliest arrival over all chains
 * of them that pass no region twice. It rests on the chain that attains it. Asked only where nothing introduced covers the place.
 */
export function arrivalBound(term: TermId, context: Context, graph: KnownGraph): Bound | undefined {
  const { region } = context.where;
  if (region === undefined) return undefined;
  const found = earliest(routesTo(term, region, context, graph, new Set()));
  if (found === undefined) return undefined;
  const { outer, inner, held } = found;
  const rests = claimsHeld(held);
  const isSpread = (claim: ClaimId): boolean => graph.claimOf(claim).relation === "spread to";
  return {
    kind: "bound",
    by: "diffusion",
    hardness: "physical",
    outer: yearsSince(outer),
    inner: yearsSince(inner),
    held,
    claims: [...rests.filter((claim) => !isSpread(claim)), ...rests.filter(isSpread)],
    alternatives: [],
  };
}

function routesTo(
  term: TermId,
  region: TermId,
  context: Context,
  graph: KnownGraph,
  passed: ReadonlySet<TermId>,
): Arrival[] {
  return graph
    .claimsOf(term)
    .filter((claim): claim is SpreadTo => claim.relation === "spread to")
    .filter(({ to, from }) => isWithin(region, to, graph.broader) && !passed.has(from))
    .filter(({ id }) => context.exceptions.defeatsOf(id).length === 0)
    .flatMap((spread) => {
      const start = arrivalAt(
        term,
        spread.from,
        context,
        graph,
        new Set([...passed, spread.to, spread.from]),
      );
      return start === undefined
        ? []
        : [
            {
              outer: start.outer + spread.years[0],
              inner: start.inner + spread.years[1],
              held: holdingBoth(start.held, [heldClaims([spread.id])]),
            },
          ];
    });
}

/** When the term was introduced in a region, or arrived there. */
function arrivalAt(
  term: TermId,
  region: TermId,
  context: Context,
  graph: KnownGraph,
  passed: ReadonlySet<TermId>,
): Arrival | undefined {
  const covering = introducedAt(term, { ...context, where: { ...context.where, region } }, graph);
  if (covering.length === 0) return earliest(routesTo(term, region, context, graph, passed));
  const active = covering.filter(({ id }) => context.exceptions.defeatsOf(id).length === 0);
  const begins = boundsOf(nearest(active, graph.broader).nearest, "physical", graph).map((bound) => ({
    outer: bound.outer[0]?.[0] ?? Number.POSITIVE_INFINITY,
    inner: bound.inner[0]?.[0] ?? Number.POSITIVE_INFINITY,
    held: bound.held,
  }));
  const latest = begins.sort((a, b) => b.outer - a.outer || compareHoldings(a.held, b.held))[0];
  return latest && { ...latest, inner: Math.max(...begins.map(({ inner }) => inner)) };
}

/** Physical `introduced` claims that cover a place, whether an exception holds of them or not. */
export const introducedAt = (term: TermId, { where }: Context, graph: KnownGraph): readonly Dated[] =>
  graph
    .claimsOf(term)
    .filter((claim): claim is Dated => claim.relation === "introduced")
    .filter((claim) => hardnessOf(claim) === "physical" && applies(claim.scope, where, graph.broader));

function earliest(arrivals: readonly Arrival[]): Arrival | undefined {
  const first = [...arrivals].sort((a, b) => a.outer - b.outer || compareHoldings(a.held, b.held))[0];
  return first && { ...first, inner: Math.min(...arrivals.map(({ inner }) => inner)) };
}
