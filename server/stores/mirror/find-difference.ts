import { isDeepStrictEqual } from "node:util";
import type { TermId } from "../../domain/ids.ts";
import type { Neighbourhood, NeighbourhoodAsk } from "../../domain/neighbourhood.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Store } from "../../ports/store.ts";
import type { WalkArrays } from "./walk-arrays.ts";

/** The first thing in which a mirror and its store differ. */
export interface Difference {
  readonly revision: RevisionNumber;
  readonly in: keyof Neighbourhood;
  /** Seeds, depth and regions of the ask. */
  readonly ask: Omit<NeighbourhoodAsk, "at">;
}

const MOST_SEEDS = 8;
const MOST_DEPTH = 6;

/** Compares the answers to asks at random, of terms that the arrays hold; what the mirror passes on to the store agrees. */
export async function findDifference(
  mirror: { neighbourhood(ask: NeighbourhoodAsk): Promise<Neighbourhood | undefined> },
  store: Pick<Store, "neighbourhood">,
  arrays: WalkArrays,
  { asks, random }: { readonly asks: number; readonly random: () => number },
): Promise<Difference | undefined> {
  for (let n = 0; n < asks; n++) {
    const ask = anyAsk(arrays, random);
    const found = await mirror.neighbourhood(ask);
    if (found === undefined) continue;
    const { revision } = found;
    const parts = partsThatDiffer(found, await store.neighbourhood({ ...ask, at: revision }));
    if (parts !== undefined) return { revision, in: parts, ask };
  }
  return undefined;
}

function anyAsk(arrays: WalkArrays, random: () => number): Omit<NeighbourhoodAsk, "at"> {
  const below = (limit: number): number => Math.floor(random() * limit);
  const { terms } = arrays;
  const [first, last] = [placeFor(arrays, "region."), placeFor(arrays, "region/")];
  const seeds = Array.from({ length: Math.min(terms.size, 1 + below(MOST_SEEDS)) }, () =>
    terms.idOf(below(terms.size)),
  );
  const regions = Array.from({ length: last > first ? below(3) : 0 }, () =>
    terms.idOf(first + below(last - first)),
  );
  return { seeds: seeds as TermId[], regions: regions as TermId[], maxDepth: below(MOST_DEPTH + 1) };
}

/** Where an id would stand among the terms that are in order: ids of one kind follow each other. */
function placeFor({ terms }: WalkArrays, id: string): number {
  let [from, to] = [0, terms.sorted];
  while (from < to) {
    const middle = (from + to) >>> 1;
    if (terms.idOf(middle) < id) from = middle + 1;
    else to = middle;
  }
  return from;
}

function partsThatDiffer(a: Neighbourhood, b: Neighbourhood): keyof Neighbourhood | undefined {
  if (!isDeepStrictEqual([...a.depths], [...b.depths])) return "depths";
  return (["cutAt", "claims", "terms"] as const).find((part) => !isDeepStrictEqual(a[part], b[part]));
}
