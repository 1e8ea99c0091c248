import type { Claim } from "../../domain/claim.ts";
import type { TermId } from "../../domain/ids.ts";
import { isWithin } from "../../domain/region.ts";
import type { Place } from "../../domain/report.ts";
import type { KnownGraph } from "../known-graph.ts";

/**
 * Of places, by their number in the list, those that the claims on one feature, and on all that its closed lists lead to, tell
 * apart: the first of each that come to the same. A graph can tell hundreds of places apart, of which a single feature is
 * said to differ between a few.
 */
export function placesApart(
  places: readonly Place[],
  graph: KnownGraph,
): (feature: TermId) => readonly number[] {
  const marks = new Map<TermId, string>();
  /** For each place whether it lies within the region. */
  const markOf = (region: TermId): string => {
    const known = marks.get(region);
    if (known !== undefined) return known;
    const mark = places
      .map((place) => (place.region !== null && isWithin(place.region, region, graph.broader) ? "1" : "0"))
      .join("");
    marks.set(region, mark);
    return mark;
  };
  const found = new Map<string, readonly number[]>();
  return (feature) => {
    const tellers = [...new Set(regionsTelling(feature, graph).map(markOf))].sort();
    const key = tellers.join(" ");
    const known = found.get(key);
    if (known !== undefined) return known;
    const first = new Map<string, number>();
    for (const place of places.keys()) {
      const mark = tellers.map((teller) => teller[place]).join("");
      if (!first.has(mark)) first.set(mark, place);
    }
    const apart = [...first.values()];
    found.set(key, apart);
    return apart;
  };
}

/** Regions by which a place can make a difference to a feature. */
function regionsTelling(feature: TermId, graph: KnownGraph): readonly TermId[] {
  const reached = new Set([feature]);
  const regions = new Set<TermId>();
  for (const term of reached)
    for (const claim of graph.claimsOf(term)) {
      for (const region of regionsOf(claim)) regions.add(region);
      if (claim.relation === "requires" && claim.closed)
        for (const needed of claim.ways.flat()) reached.add(needed);
    }
  return [...regions];
}

/** Regions within which a claim says something that it does not say outside of them. What only is on record somewhere bounds no place. */
function regionsOf(claim: Claim): readonly TermId[] {
  switch (claim.relation) {
    case "attested":
    case "typical of":
    case "void when":
      return [];
    case "spread to":
      return [claim.to];
    default: {
      const scoped = claim.scope.region === undefined ? [] : [claim.scope.region];
      return claim.relation === "confined to" ? [...claim.regions, ...scoped] : scoped;
    }
  }
}
