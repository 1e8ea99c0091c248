import type { Steps } from "./fewest-groups.ts";
import { type Bits, hasBit, type OriginPuzzle } from "./origin-puzzle.ts";

/** The largest sets of origins no two of which can be one: the first of them in order, each ascending. */
export interface LargestCliques {
  readonly cliques: readonly (readonly number[])[];
  /** They are known to be the largest. */
  readonly isProved: boolean;
}

/** Up to `most` of the largest sets. Out of steps, the largest found. */
export function largestCliques({ origins, apart }: OriginPuzzle, most: number, steps: Steps): LargestCliques {
  const all = origins.map((_, i) => i);
  const areApart = (a: number, b: number): boolean => hasBit(apart[a] as Bits, b);
  let best: readonly number[] = greedyClique(all, areApart);

  /** Looks for larger sets than the best; false when out of steps. */
  function improve(clique: readonly number[], candidates: readonly number[]): boolean {
    if (clique.length > best.length) best = clique;
    for (const [i, candidate] of candidates.entries()) {
      const left = candidates.slice(i);
      if (clique.length + coloursOf(left, areApart) <= best.length) return true;
      if (steps.left-- <= 0) return false;
      const further = left.filter((other) => areApart(candidate, other));
      if (!improve([...clique, candidate], further)) return false;
    }
    return true;
  }

  const found: (readonly number[])[] = [];
  /** Lists the sets of the best size in order. */
  function list(clique: readonly number[], candidates: readonly number[]): boolean {
    if (clique.length === best.length) found.push(clique);
    for (const [i, candidate] of candidates.entries()) {
      const left = candidates.slice(i);
      if (found.length >= most || clique.length + coloursOf(left, areApart) < best.length) return true;
      if (steps.left-- <= 0) return false;
      const further = left.filter((other) => areApart(candidate, other));
      if (!list([...clique, candidate], further)) return false;
    }
    return true;
  }

  const isProved = improve([], all) && list([], all);
  return { cliques: found.length > 0 ? found : [best], isProved };
}

/** Each in its turn that is apart from all before it, those apart from most others first. */
function greedyClique(
  all: readonly number[],
  areApart: (a: number, b: number) => boolean,
): readonly number[] {
  const degree = all.map((one) => all.filter((other) => areApart(one, other)).length);
  const inTurn = [...all].sort((a, b) => (degree[b] as number) - (degree[a] as number) || a - b);
  const clique: number[] = [];
  for (const one of inTurn) if (clique.every((other) => areApart(one, other))) clique.push(one);
  return clique.sort((a, b) => a - b);
}

/** Sets of candidates that can be one in pairs, made greedily: no clique among them is larger than there are such sets. */
function coloursOf(candidates: readonly number[], areApart: (a: number, b: number) => boolean): number {
  const colours: number[][] = [];
  for (const one of candidates) {
    const colour = colours.find((same) => !same.some((other) => areApart(one, other)));
    if (colour) colour.push(one);
    else colours.push([one]);
  }
  return colours.length;
}
