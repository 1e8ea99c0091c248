import type { Found } from "./cheapest.ts";
import { Heap } from "./heap.ts";
import type { InOrder } from "./in-order.ts";
import { both } from "./items.ts";

/** Sets of several components together, in order of cost: one of each. Nothing is shared between components. */
export function combined(parts: readonly InOrder[]): () => Found | undefined {
  interface Picked {
    readonly picks: readonly number[];
    /** Only this component and those after it move on, so that each combination comes up once. */
    readonly from: number;
  }
  const heap = new Heap<Picked>();
  const foundOf = ({ picks }: Picked): Found | undefined => {
    let [items, cost]: [Found["items"], number] = [[], 0];
    for (const [i, n] of picks.entries()) {
      const found = parts[i]?.(n);
      if (found === undefined) return undefined;
      items = both(items, found.items);
      cost += found.cost;
    }
    return { items, cost };
  };
  const put = (picked: Picked): void => {
    const found = foundOf(picked);
    if (found) heap.put(found.cost, picked);
  };
  let isBegun = false;
  return () => {
    if (!isBegun) put({ picks: parts.map(() => 0), from: 0 });
    isBegun = true;
    const next = heap.take();
    if (next === undefined) return undefined;
    for (let i = next.from; i < parts.length; i++)
      put({ picks: next.picks.map((n, at) => (at === i ? n + 1 : n)), from: i });
    return foundOf(next);
  };
}
