import type { Claim } from "#server/domain/claim.ts";
import { id, type TermId } from "#server/domain/ids.ts";
import { namedTerms } from "#server/domain/named-terms.ts";
import type { Neighbourhood } from "#server/domain/neighbourhood.ts";
import type { Term, TermKind } from "#server/domain/term.ts";

/** A term with its id for a label; a feature unless it says otherwise. */
export const aTerm = (name: string, kind: TermKind = "feature", broader?: string): Term => ({
  id: id(name),
  kind,
  label: name,
  ...(broader === undefined ? {} : { broader: id<"term">(broader) }),
});

/** A tree of terms written as nested objects: `aTree("region", { World: { England: { London: {} } } })`. */
export interface Tree {
  readonly [name: string]: Tree;
}
export const aTree = (kind: TermKind, tree: Tree, broader?: string): Term[] =>
  Object.entries(tree).flatMap(([name, below]) => [aTerm(name, kind, broader), ...aTree(kind, below, name)]);

const byId = (a: { readonly id: string }, b: { readonly id: string }): number => (a.id < b.id ? -1 : 1);

/**
 * All these accepted claims and terms as one neighbourhood, sorted as a store sorts them; terms that a claim names and nobody
 * lists are added as features. Depths count hops of `requires` from the seeds, or from all subjects if no seed is given.
 */
export function neighbourhoodOf(
  terms: readonly Term[],
  claims: readonly Claim[],
  seeds?: readonly string[],
): Neighbourhood {
  const accepted = claims.filter((claim) => claim.status === "accepted").sort(byId);
  const known = new Map(terms.map((term) => [term.id, term]));
  for (const name of accepted.flatMap(namedTerms)) if (!known.has(name)) known.set(name, aTerm(name));
  const depths = new Map<TermId, number>();
  let level: readonly TermId[] =
    seeds?.map((seed) => id<"term">(seed)) ??
    accepted.flatMap((claim) => ("subject" in claim ? [claim.subject] : []));
  for (let depth = 0; level.length > 0; depth++) {
    for (const term of level) if (!depths.has(term)) depths.set(term, depth);
    const reached = new Set(level);
    level = accepted
      .flatMap((claim) =>
        claim.relation === "requires" && reached.has(claim.subject) ? claim.ways.flat() : [],
      )
      .filter((term) => !depths.has(term));
  }
  return { revision: 1, terms: [...known.values()].sort(byId), claims: accepted, depths, cutAt: [] };
}
