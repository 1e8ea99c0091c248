import type { Claim } from "../domain/claim.ts";
import { compareText } from "../domain/compare.ts";
import type { TermId } from "../domain/ids.ts";
import { ancestors, type Broader, isWithin } from "../domain/region.ts";
import type { Place } from "../domain/report.ts";
import type { KnownGraph } from "./known-graph.ts";

/**
 * The places of an attribution (E14): each region at or below the claimed one that a claim of the neighbourhood names, or that
 * lies on the way to one, and for those with others below them "elsewhere in it". A region that no claim tells apart from
 * what surrounds it is part of that. Without a claimed region all places; with nothing to tell them apart, one. Regions `apart` are
 * told apart though no claim does.
 */
export function placesWithin(
  graph: KnownGraph,
  claimed: TermId | undefined,
  apart: readonly TermId[] = [],
): readonly Place[] {
  const { broader } = graph;
  const nodes = new Set<TermId>(claimed === undefined ? [] : [claimed]);
  const { tellers, named } = tellersIn(graph.claims);
  for (const region of new Set([...named, ...apart]))
    for (const node of ancestors(region, broader))
      if (claimed === undefined || isWithin(node, claimed, broader)) nodes.add(node);
  const children = Map.groupBy(sorted(nodes), (node) => broader.get(node));
  const below = (node: TermId): readonly TermId[] => children.get(node) ?? [];

  const places: Place[] = [];
  /** Adds the places at and below a node; says whether all of it is one with what surrounds it. */
  const add = (node: TermId, around: string | undefined): boolean => {
    const mark =
      markOf(node, tellers, broader) +
      apart.map((region) => Number(isWithin(node, region, broader))).join("");
    const own = places.length;
    places.push({ region: node, elsewhere: false });
    const alike = below(node).map((child) => add(child, mark));
    if (mark === around) places.splice(own, 1);
    else places[own] = { region: node, elsewhere: alike.includes(false) };
    return mark === around && !alike.includes(false);
  };
  const roots =
    claimed === undefined
      ? sorted(nodes).filter((node) => !nodes.has(broader.get(node) as TermId))
      : [claimed];
  if (roots.length === 1) add(roots[0] as TermId, undefined);
  else {
    places.push({ region: null, elsewhere: roots.length > 0 });
    for (const root of roots) add(root, undefined);
  }
  return places;
}

const sorted = (nodes: ReadonlySet<TermId>): TermId[] => [...nodes].sort(compareText);

/** Regions by which a claim can tell places apart. What bounds nothing anywhere tells none. */
function regionsNamed(claim: Claim): readonly TermId[] {
  switch (claim.relation) {
    case "attested":
    case "typical of":
    case "indicates":
    case "void when":
      return [];
    case "spread to":
      return [claim.from, claim.to];
    case "confined to":
      return [...claim.regions, ...(claim.scope.region === undefined ? [] : [claim.scope.region])];
    default:
      return claim.scope.region === undefined ? [] : [claim.scope.region];
  }
}

/** Claims that tell places apart, one of those that do so in the same way, as there may be thousands of each; and by which regions. */
function tellersIn(claims: readonly Claim[]): {
  readonly tellers: readonly Claim[];
  readonly named: ReadonlySet<TermId>;
} {
  const found = new Map<string, Claim>();
  const named = new Set<TermId>();
  for (const claim of claims) {
    const regions = regionsNamed(claim);
    if (regions.length === 0) continue;
    for (const region of regions) named.add(region);
    const how = claim.relation === "spread to" || claim.relation === "confined to" ? claim.relation : "";
    const scope = "scope" in claim ? (claim.scope.region ?? "") : "";
    found.set([how, scope, ...regions].join(" "), claim);
  }
  return { tellers: [...found.values()], named };
}

/** What such claims make of a region: two with one mark cannot be told apart. */
function markOf(region: TermId, tellers: readonly Claim[], broader: Broader): string {
  const around = new Set(ancestors(region, broader));
  const inside = (other: TermId | undefined): boolean => other === undefined || around.has(other);
  return tellers
    .map((claim) => {
      if (claim.relation === "spread to") return inside(claim.to) ? "1" : "0";
      const applies = "scope" in claim && inside(claim.scope.region) ? "1" : "0";
      return claim.relation === "confined to" ? applies + (claim.regions.some(inside) ? "1" : "0") : applies;
    })
    .join("");
}
