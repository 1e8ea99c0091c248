import type { Neighbourhood, NeighbourhoodAsk } from "../domain/neighbourhood.ts";
import type { Reads } from "./impact-index.ts";

/** What an answer on a neighbourhood was read from; what was asked for and is not there can still come. */
export const readsOf = (
  { depths, terms }: Neighbourhood,
  { seeds, regions }: Pick<NeighbourhoodAsk, "seeds" | "regions">,
): Reads => ({
  visited: depths.keys(),
  beside: [...terms.map(({ id }) => id), ...seeds, ...regions],
});
