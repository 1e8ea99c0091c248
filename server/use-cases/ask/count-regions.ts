import type { TermId } from "../../domain/ids.ts";
import { ancestors } from "../../domain/region.ts";
import type { RegionEvidence } from "./read-region-evidence.ts";

/** How many claims there are on a region. */
export interface RegionCount {
  readonly region: TermId;
  /** Claims that name it. */
  readonly own: number;
  /** Claims that name it or a region within it, each once. */
  readonly within: number;
}

/** Every region with its claims counted, in the order of the ids. */
export function countRegions({ regions, broader, claims }: RegionEvidence): readonly RegionCount[] {
  const own = new Map<TermId, number>();
  const within = new Map<TermId, number>();
  const more = (counts: Map<TermId, number>, ids: Iterable<TermId>) => {
    for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + 1);
  };
  for (const placed of claims) {
    more(own, placed.regions);
    more(within, new Set(placed.regions.flatMap((region) => ancestors(region, broader))));
  }
  return [...regions.keys()].map((region) => ({
    region,
    own: own.get(region) ?? 0,
    within: within.get(region) ?? 0,
  }));
}
