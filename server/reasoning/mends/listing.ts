import type { Steps } from "./budget.ts";
import type { Found } from "./cheapest.ts";
import { combined } from "./combined.ts";
import { componentsOf } from "./components.ts";
import { fixed } from "./fixed.ts";
import { Heap } from "./heap.ts";
import { inOrder } from "./in-order.ts";
import type { Items } from "./items.ts";
import type { Case } from "./search.ts";

/** Sets of all cases in order of cost; the same set can come up in several. */
export interface Listing {
  /** The next of them, if it costs no more than `most`; the same is asked for again with a larger one. */
  readonly next: (most: number) => Found | undefined;
  /** Nothing that is still to come costs less; infinite at the end. */
  readonly atLeast: () => number;
}

/** How far above the cheapest set is looked in the first round, and in the next; then without a limit. In costs, of which 4096 are a thousandth. */
const ROOMS = [500, 2_000, 8_000].map((price) => price * 4096);

/**
 * Lists the sets of all cases, of which the cheapest costs `least` or is not known to cost less, in rounds (a short list looks first for what costs no more): each looks only at what can be part of a set up to some cost, which leaves little to choose, and the
 * next starts where it ended.
 */
export function listingOf(
  cases: readonly Case[],
  { least, isLong }: { readonly least: number; readonly isLong: boolean },
  items: Items,
  steps: Steps,
): Listing {
  const limits = [...(isLong ? [] : [least]), ...ROOMS.map((room) => least + room), Number.POSITIVE_INFINITY];
  let round = 0;
  let passed = -1;
  let listing = listingUpTo(cases, limits[0] as number, items, steps);
  let isEnded = false;
  return {
    next: (most) => {
      while (!isEnded) {
        const found = listing.next();
        if (found !== undefined && found.cost > passed) return found;
        if (found !== undefined) continue;
        const limit = limits[round] as number;
        if (limit === Number.POSITIVE_INFINITY) isEnded = true;
        else if (limit >= most || listing.lost() < Number.POSITIVE_INFINITY) return undefined;
        else {
          passed = limit;
          listing = listingUpTo(cases, limits[++round] as number, items, steps);
        }
      }
      return undefined;
    },
    atLeast: () => Math.min(listing.lost(), isEnded ? Number.POSITIVE_INFINITY : Math.max(0, passed)),
  };
}

/** All sets up to some cost. `lost`: what was passed over for want of steps costs at least this. */
function listingUpTo(
  cases: readonly Case[],
  most: number,
  items: Items,
  steps: Steps,
): { readonly next: () => Found | undefined; readonly lost: () => number } {
  interface Source {
    readonly next: () => Found | undefined;
    readonly found: Found;
  }
  const heap = new Heap<Source>();
  let left = 0;
  let lost = Number.POSITIVE_INFINITY;
  const put = (next: () => Found | undefined, from: number): void => {
    const found = next();
    if (steps.areUsed) lost = Math.min(lost, from);
    if (found !== undefined && found.cost <= most) heap.put(found.cost, { next, found });
  };
  const open = ({ choices, relaxed: read, atLeast }: Case): void => {
    const relaxed = read();
    const components = componentsOf(fixed(choices, relaxed, atLeast, most));
    put(combined(components.map((component) => inOrder(component, items, relaxed, steps))), atLeast);
  };
  return {
    next: () => {
      for (let one = cases[left]; one !== undefined; one = cases[left]) {
        if (one.atLeast > Math.min(heap.least, most) + 0.5) break;
        left++;
        open(one);
      }
      const top = heap.take();
      if (top === undefined) return undefined;
      put(top.next, top.found.cost);
      return top.found.cost > lost ? undefined : top.found;
    },
    lost: () => lost,
  };
}
