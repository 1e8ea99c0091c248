import type { Graph } from "../../domain/change.ts";
import type { Claim, Requires, VoidWhen } from "../../domain/claim.ts";
import { compareIds, compareText } from "../../domain/compare.ts";
import type { TermId } from "../../domain/ids.ts";
import { namedTerms } from "../../domain/named-terms.ts";
import type { Neighbourhood, NeighbourhoodAsk } from "../../domain/neighbourhood.ts";
import type { RevisionNumber } from "../../domain/revision.ts";

const isRequires = (claim: Claim): claim is Requires => claim.relation === "requires";
const isException = (claim: Claim): claim is VoidWhen => claim.relation === "void when";

/** The neighbourhood as its definition says it, step by step: the reference for every other store. */
export function walkGraph(graph: Graph, revision: RevisionNumber, ask: NeighbourhoodAsk): Neighbourhood {
  const accepted = [...graph.claims.values()].filter(({ status }) => status === "accepted");
  const scope = regionsInScope(graph, ask.regions);
  const inScope = ({ scope: { region } }: Requires): boolean =>
    region === undefined || scope === "all" || scope.has(region);
  const leadsTo = (from: ReadonlySet<TermId>): TermId[] =>
    accepted
      .filter(isRequires)
      .filter((claim) => from.has(claim.subject) && inScope(claim))
      .flatMap(({ ways }) => ways.flat());

  const depths = new Map<TermId, number>();
  let level = new Set(ask.seeds.filter((seed) => graph.terms.has(seed)));
  for (let depth = 0; level.size > 0 && depth <= ask.maxDepth; depth++) {
    for (const term of level) depths.set(term, depth);
    level = new Set(leadsTo(level).filter((term) => !depths.has(term)));
  }
  const cutAt = [...depths]
    .filter(
      ([term, depth]) => depth === ask.maxDepth && leadsTo(new Set([term])).some((to) => !depths.has(to)),
    )
    .map(([term]) => term);

  const claims = withExceptions(
    accepted.filter((claim) => "subject" in claim && depths.has(claim.subject)),
    accepted.filter(isException),
  );
  const terms = withBroader(graph, [...depths.keys(), ...claims.flatMap(namedTerms)]);
  return {
    revision,
    terms: [...terms].flatMap((term) => graph.terms.get(term) ?? []).sort(compareIds),
    claims: claims.sort(compareIds),
    depths: new Map([...depths].sort(([a], [b]) => compareText(a, b))),
    cutAt: cutAt.sort(),
  };
}

/** The asked regions, all above and all below them. */
function regionsInScope(graph: Graph, asked: readonly TermId[]): ReadonlySet<TermId> | "all" {
  if (asked.length === 0) return "all";
  const below = [...graph.terms.values()].filter(({ id }) =>
    [...withBroader(graph, [id])].some((above) => asked.includes(above)),
  );
  return new Set([...withBroader(graph, asked), ...below.map(({ id }) => id)]);
}

/** These terms and all broader ones. */
function withBroader(graph: Graph, terms: Iterable<TermId>): ReadonlySet<TermId> {
  const found = new Set<TermId>();
  for (const term of terms)
    for (
      let next: TermId | undefined = term;
      next !== undefined && !found.has(next);
      next = graph.terms.get(next)?.broader
    )
      found.add(next);
  return found;
}

/** These claims, their exceptions, the exceptions of those, and so on. */
function withExceptions(claims: readonly Claim[], exceptions: readonly VoidWhen[]): Claim[] {
  const found = new Map<string, Claim>(claims.map((claim) => [claim.id, claim]));
  for (const { id } of found.values())
    for (const exception of exceptions) if (exception.of === id) found.set(exception.id, exception);
  return [...found.values()];
}
