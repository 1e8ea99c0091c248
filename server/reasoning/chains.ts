import type { Requires } from "../domain/claim.ts";
import { compareIds, compareText } from "../domain/compare.ts";
import type { ClaimId, TermId } from "../domain/ids.ts";
import type { View } from "./view.ts";

/** Where a chain ends: at a claim that dates or fails to, at a begin that is assumed, or at a term that nothing dates. */
export type ChainEnd =
  | { readonly kind: "claim"; readonly claim: ClaimId }
  | { readonly kind: "assumed"; readonly by: "diffusion" | "fallback" }
  | { readonly kind: "undated" };

/** One way down from a feature to an end, as the claims have it; what it comes to differs from place to place. */
export interface Chain {
  /** The lists followed and which of their ways. */
  readonly steps: readonly { readonly list: Requires; readonly way: number }[];
  /** Terms passed, the feature first. */
  readonly terms: readonly TermId[];
  readonly end: ChainEnd;
}

/** All chains from a term, seen from several views at once. */
export interface Chains {
  /** How many there are, without listing them. */
  readonly count: (term: TermId) => number;
  /** One after the other in a fixed order: ends before longer chains, claims in `first` before others, then by id. */
  readonly list: (term: TermId, first: ReadonlySet<ClaimId>) => Iterable<Chain>;
}

interface Outline {
  readonly ends: readonly ChainEnd[];
  readonly lists: readonly Requires[];
}

/** Reads the chains off the views. A term met again on its own chain ends it (E9), and a count found so is not kept. */
export function chainsOf(views: readonly View[]): Chains {
  const outlines = new Map<TermId, Outline>();
  const outlineOf = (term: TermId): Outline => {
    const found = outlines.get(term) ?? outline(term, views);
    outlines.set(term, found);
    return found;
  };

  const counts = new Map<TermId, number>();
  const depths = new Map<TermId, number>();
  function visit(term: TermId): { readonly count: number; readonly cut: number } {
    const kept = counts.get(term);
    if (kept !== undefined) return { count: kept, cut: Number.POSITIVE_INFINITY };
    const above = depths.get(term);
    if (above !== undefined) return { count: 1, cut: above };
    const depth = depths.size;
    depths.set(term, depth);
    const { ends, lists } = outlineOf(term);
    let count = ends.length;
    let cut = Number.POSITIVE_INFINITY;
    for (const needed of lists.flatMap(({ ways }) => ways.flat())) {
      const found = visit(needed);
      count = Math.min(count + found.count, Number.MAX_SAFE_INTEGER);
      cut = Math.min(cut, found.cut);
    }
    depths.delete(term);
    if (cut < depth) return { count, cut };
    counts.set(term, count);
    return { count, cut: Number.POSITIVE_INFINITY };
  }

  function* walk(
    terms: readonly TermId[],
    steps: Chain["steps"],
    first: ReadonlySet<ClaimId>,
  ): Iterable<Chain> {
    const term = terms.at(-1) as TermId;
    if (terms.indexOf(term) < terms.length - 1) {
      yield { terms, steps, end: { kind: "undated" } };
      return;
    }
    const { ends, lists } = outlineOf(term);
    for (const end of preferred(ends, first)) yield { terms, steps, end };
    for (const list of preferred(lists, first))
      for (const [way, needed] of list.ways.entries())
        for (const next of needed) yield* walk([...terms, next], [...steps, { list, way }], first);
  }
  return {
    count: (term) => visit(term).count,
    list: (term, first) => walk([term], [], first),
  };
}

function preferred<One extends ChainEnd | Requires>(all: readonly One[], first: ReadonlySet<ClaimId>): One[] {
  const isFirst = (one: ChainEnd | Requires): boolean =>
    "relation" in one
      ? first.has(one.id)
      : one.kind === "assumed" || (one.kind === "claim" && first.has(one.claim));
  return [...all.filter(isFirst), ...all.filter((one) => !isFirst(one))];
}

/** What ends and what goes on at a term, at any of the places. */
function outline(term: TermId, views: readonly View[]): Outline {
  const inForce = new Set<ClaimId>();
  const setAside = new Set<ClaimId>();
  const assumed = new Map<"diffusion" | "fallback", readonly ClaimId[]>();
  const lists = new Map<ClaimId, Requires>();
  for (const view of views) {
    const resolved = view.resolve(term);
    for (const { claim } of resolved.lists) lists.set(claim.id, claim);
    for (const claim of resolved.open) lists.set(claim.id, claim);
    for (const { id } of resolved.endless) inForce.add(id);
    for (const claim of resolved.setAside.keys()) setAside.add(claim);
    for (const { by, claims } of resolved.bounds)
      if (by === "diffusion" || by === "fallback") assumed.set(by, claims);
      else for (const claim of claims) inForce.add(claim);
  }
  // What an assumed begin rests on is told with it, not once more as a claim that does not apply here.
  for (const claim of [...assumed.values()].flat()) setAside.delete(claim);
  const ends: ChainEnd[] = [
    ...[...new Set([...inForce, ...setAside])]
      .filter((claim) => !lists.has(claim))
      .sort(compareText)
      .map((claim) => ({ kind: "claim" as const, claim })),
    ...[...assumed.keys()].sort().map((by) => ({ kind: "assumed" as const, by })),
  ];
  if (ends.length === 0 && lists.size === 0) ends.push({ kind: "undated" });
  return { ends, lists: [...lists.values()].sort(compareIds) };
}
