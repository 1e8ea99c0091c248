import type { Piece } from "../domain/examination.ts";
import type { TermId } from "../domain/ids.ts";
import type { NeighbourhoodAsk } from "../domain/neighbourhood.ts";
import type { Assumptions } from "../domain/report.ts";

/**
 * What the engine needs to know of the graph to examine a piece. The kinds of part and the regions are seeds too: no chain starts
 * from them, but a scope is met by their broader terms, and only seeds are sure to come with theirs.
 * If the attribution leaves the region open, every region is asked for.
 */
export function askFor(
  { attribution, parts, observations }: Piece,
  { maxDepth }: Assumptions,
): NeighbourhoodAsk {
  const { region, form, style, maker } = attribution;
  const ownRegions = parts.map((part) => part.region);
  const seeds = [
    ...observations.map(({ feature }) => feature),
    ...[form, style, maker, region],
    ...parts.map(({ kind }) => kind),
    ...ownRegions,
  ];
  return {
    seeds: known(seeds),
    regions: region === undefined ? [] : known([region, ...ownRegions]),
    maxDepth,
  };
}

const known = (terms: readonly (TermId | undefined)[]): readonly TermId[] =>
  [...new Set(terms.filter((term) => term !== undefined))].sort();
