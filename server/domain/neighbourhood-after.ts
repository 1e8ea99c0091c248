import type { Change } from "./change.ts";
import type { Claim, VoidWhen } from "./claim.ts";
import { compareIds, compareText } from "./compare.ts";
import type { ClaimId, TermId } from "./ids.ts";
import { namedTerms } from "./named-terms.ts";
import type { Neighbourhood, NeighbourhoodAsk } from "./neighbourhood.ts";
import { type Broader, isWithin } from "./region.ts";
import type { Term } from "./term.ts";

/** What is known of a graph before a change: enough to say what a neighbourhood would be after it. */
export interface Known {
  readonly terms: ReadonlyMap<TermId, Term>;
  /** Accepted ones, with all their exceptions. */
  readonly claims: ReadonlyMap<ClaimId, Claim>;
  /** Terms of which every accepted claim is known. */
  readonly whole: ReadonlySet<TermId>;
}

/** Claims never change; what one names is read once. */
const namedBy = new WeakMap<Claim, readonly TermId[]>();
function namesIn(claim: Claim): readonly TermId[] {
  const known = namedBy.get(claim);
  if (known !== undefined) return known;
  const names = namedTerms(claim);
  namedBy.set(claim, names);
  return names;
}

/**
 * The neighbourhood as the store would give it after the change, to the byte; or the terms that the walk would come to and
 * of which not all is known. `revision` is that of the neighbourhood before.
 */
export function neighbourhoodAfter(
  known: Known,
  change: Change,
  { seeds, regions, maxDepth }: Omit<NeighbourhoodAsk, "at">,
  revision: number,
): Neighbourhood | { readonly missing: readonly TermId[] } {
  const { terms, claims } = changed(known, change);
  const broader: Broader = new Map(
    [...terms.values()].flatMap(({ id, broader }) => (broader ? [[id, broader]] : [])),
  );
  const isAsked = (region: TermId | undefined): boolean =>
    region === undefined ||
    regions.length === 0 ||
    regions.some((asked) => isWithin(asked, region, broader) || isWithin(region, asked, broader));

  const bySubject = new Map<TermId, Claim[]>();
  const exceptions = new Map<ClaimId, VoidWhen[]>();
  for (const claim of claims.values())
    if (claim.relation === "void when") addTo(exceptions, claim.of, claim);
    else addTo(bySubject, claim.subject, claim);
  const leadsFrom = (term: TermId): readonly TermId[] =>
    (bySubject.get(term) ?? []).flatMap((claim) =>
      claim.relation === "requires" && isAsked(claim.scope.region) ? claim.ways.flat() : [],
    );

  const added = new Set(
    change.flatMap((edit) => (edit.kind === "term" && !edit.before && edit.after ? [edit.after.id] : [])),
  );
  const depths = new Map<TermId, number>();
  const missing: TermId[] = [];
  let level: readonly TermId[] = seeds.filter((seed) => terms.has(seed));
  for (let depth = 0; level.length > 0 && depth <= maxDepth; depth++) {
    for (const term of level) {
      depths.set(term, depth);
      if (!known.whole.has(term) && !added.has(term)) missing.push(term);
    }
    level = [...new Set(level.flatMap(leadsFrom))].filter((term) => !depths.has(term));
  }
  if (missing.length > 0) return { missing };

  const found = new Map<ClaimId, Claim>();
  for (const term of depths.keys()) for (const claim of bySubject.get(term) ?? []) found.set(claim.id, claim);
  // A map iterated over while it grows: the exceptions found are asked for exceptions of their own.
  for (const id of found.keys())
    for (const exception of exceptions.get(id) ?? []) found.set(exception.id, exception);
  const cutAt = [...depths].filter(
    ([term, depth]) => depth === maxDepth && leadsFrom(term).some((to) => !depths.has(to)),
  );
  return {
    ...{ revision, claims: [...found.values()].sort(compareIds) },
    terms: withBroader(terms, depths.keys(), found.values()),
    depths: new Map([...depths].sort(([a], [b]) => compareText(a, b))),
    cutAt: cutAt.map(([term]) => term).sort(compareText),
  };
}

function changed({ terms, claims }: Known, change: Change): Pick<Known, "terms" | "claims"> {
  const [termsAfter, claimsAfter] = [new Map(terms), new Map(claims)];
  for (const edit of change) {
    if (edit.kind === "term") {
      if (edit.before) termsAfter.delete(edit.before.id);
      if (edit.after) termsAfter.set(edit.after.id, edit.after);
    }
    if (edit.kind === "claim") {
      if (edit.before) claimsAfter.delete(edit.before.id);
      if (edit.after?.status === "accepted") claimsAfter.set(edit.after.id, edit.after);
    }
  }
  return { terms: termsAfter, claims: claimsAfter };
}

function withBroader(
  terms: ReadonlyMap<TermId, Term>,
  visited: Iterable<TermId>,
  claims: Iterable<Claim>,
): readonly Term[] {
  const kept = new Set<Term>();
  const keep = (id: TermId): void => {
    for (let term = terms.get(id); term && !kept.has(term); term = term.broader && terms.get(term.broader))
      kept.add(term);
  };
  for (const term of visited) keep(term);
  for (const claim of claims) for (const term of namesIn(claim)) keep(term);
  return [...kept].sort(compareIds);
}

function addTo<Key, Value>(lists: Map<Key, Value[]>, key: Key, value: Value): void {
  const list = lists.get(key);
  if (list) list.push(value);
  else lists.set(key, [value]);
}
