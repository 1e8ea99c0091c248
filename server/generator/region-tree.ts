import type { GraphPlan } from "./graph-plan.ts";
import { type RandomSource, randomSourceOf } from "./random-source.ts";

/** Regions by number; 0 is the root. Early numbers are large: they have most narrower ones, and most is said of them. */
export interface RegionTree {
  /** The one above, by number; of the root itself. */
  readonly above: Int32Array;
  /** Steps from the root. */
  readonly depths: Uint8Array;
  /** Numbers by depth. */
  readonly byDepth: readonly (readonly number[])[];
}

const DEEPEST = 7;

/** Grows the tree: each region lies in one before it, in early ones much more often than in late ones. */
export function growRegions({ regions, seed }: GraphPlan): RegionTree {
  const above = new Int32Array(regions);
  const depths = new Uint8Array(regions);
  const byDepth: number[][] = [[0]];
  for (let region = 1; region < regions; region++) {
    const random = randomSourceOf(seed, 1, region);
    let under = region < 4 ? 0 : random.chance(0.6) ? random.skewed(region) : random.below(region);
    while (depths[under] === DEEPEST) under = above[under] as number;
    above[region] = under;
    const depth = (depths[under] as number) + 1;
    depths[region] = depth;
    byDepth[depth] ??= [];
    byDepth[depth]?.push(region);
  }
  return { above, depths, byDepth };
}

/** The region itself or the one above it that is so many steps from the root. */
export function atDepth({ above, depths }: RegionTree, region: number, depth: number): number {
  let at = region;
  while ((depths[at] as number) > depth) at = above[at] as number;
  return at;
}

/** Whether one lies in the other or is the same. */
export function isIn(tree: RegionTree, region: number, wider: number): boolean {
  return atDepth(tree, region, tree.depths[wider] as number) === wider;
}

/** Low numbers of a list very much more often. */
export const pickUneven = <Item>(random: RandomSource, items: readonly Item[]): Item =>
  items[random.skewed(1 + random.skewed(items.length))] as Item;
