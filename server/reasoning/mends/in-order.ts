import type { Steps } from "./budget.ts";
import type { Found } from "./cheapest.ts";
import { type Choice, type Component, clauseItems } from "./components.ts";
import { Heap } from "./heap.ts";
import { both, type Item, type Items, isAllIn } from "./items.ts";
import type { Relaxed } from "./relaxed.ts";
import type { Stance, Treatment } from "./stances.ts";

/** Sets in order of cost, found as they are asked for; undefined at the end, or when the steps are used up. */
export type InOrder = (n: number) => Found | undefined;

/** Costs are whole numbers; shares of them are not. */
const ROUNDING = 0.001;

/** Part of a way through a component, up to a clause. */
interface Node extends Found {
  readonly choice: number;
  readonly originals: readonly number[];
  readonly stance?: Stance;
  readonly need: number;
  readonly treatment?: Treatment;
  readonly clause: number;
}

/** Minimal sets for one component, the cheapest first: best-first search with the shared-out bound (Hart, Nilsson & Raphael 1968). */
export function inOrder(component: Component, items: Items, relaxed: Relaxed, steps: Steps): InOrder {
  const found: Found[] = [];
  const heap = new Heap<Node>();
  const met = new Set<string>();
  const put = (node: Node): void => heap.put(node.cost + remaining(node), node);

  const alone = component.map((choice) => relaxed.choice(choice, []));
  const suffix = alone.map((_, at) => alone.slice(at).reduce((sum, one) => sum + one, 0));
  const used = component.map(({ stances }) => clauseItems(stances));
  /** All choices from this one on. */
  const from = (at: number, has: readonly Item[]): number => {
    let sum = suffix[at] ?? 0;
    for (let i = at; i < component.length; i++)
      if (has.some((item) => used[i]?.has(item)))
        sum += relaxed.choice(component[i] as Choice, has) - (alone[i] as number);
    return sum;
  };
  const remaining = ({ choice, stance, need, treatment, clause, items: has }: Node): number => {
    let sum = from(stance === undefined ? choice : choice + 1, has);
    for (let i = treatment === undefined ? need : need + 1; i < (stance?.needs.length ?? 0); i++) {
      const next = stance?.needs[i];
      if (next) sum += relaxed.need(next, has);
    }
    const here = stance?.needs[need];
    let most = 0;
    if (here !== undefined)
      for (const drops of treatment?.clauses.slice(clause) ?? [])
        most = Math.max(most, relaxed.clause(here, drops, has));
    return sum + most;
  };
  const giving = (node: Node, item: Item | undefined): Node =>
    item === undefined || node.items.includes(item)
      ? node
      : { ...node, items: both(node.items, [item]), cost: node.cost + items.cost(item) };

  function expand(node: Node): readonly Node[] {
    const { choice, stance, need, treatment, clause, ...rest } = node;
    const here = component[choice];
    if (here === undefined) return [];
    if (stance === undefined)
      return here.stances.map((one) => {
        const start = { ...rest, choice, stance: one, need: 0, clause: 0 };
        if (one.item !== undefined) return giving(start, one.item);
        const against = here.apart.filter((one) => node.originals.includes(one.unit));
        const paid = against.reduce<Node>((before, { item }) => giving(before, item), start);
        return {
          ...paid,
          originals: here.apart.length > 0 ? [...paid.originals, here.unit] : paid.originals,
        };
      });
    if (treatment === undefined) {
      const next = stance.needs[need];
      if (next === undefined) return [{ ...rest, choice: choice + 1, need: 0, clause: 0 }];
      return next.treatments.map((one) =>
        giving({ ...rest, choice, stance, need, treatment: one, clause: 0 }, one.item),
      );
    }
    const drops = treatment.clauses[clause];
    if (drops === undefined) return [{ ...rest, choice, stance, need: need + 1, clause: 0 }];
    const next = { ...rest, choice, stance, need, treatment, clause: clause + 1 };
    return drops.some((item) => node.items.includes(item)) ? [next] : drops.map((item) => giving(next, item));
  }

  const start: Node = { items: [], cost: 0, choice: 0, originals: [], need: 0, clause: 0 };
  put(start);
  return (n) => {
    while (found.length <= n) {
      if (heap.size === 0 || steps.areUsed) return undefined;
      steps.use();
      let node = heap.take() as Node;
      // What leaves no choice is gone through at once, as long as nothing cheaper waits.
      let next = expand(node);
      for (; next.length === 1; next = expand(node)) node = next[0] as Node;
      if (node.cost + remaining(node) > heap.least + ROUNDING) {
        put(node);
        continue;
      }
      if (node.choice === component.length) {
        if (!found.some((other) => isAllIn(other.items, node.items)))
          found.push({ items: node.items, cost: node.cost });
        continue;
      }
      const key = `${node.choice} ${here(node, component)} ${node.originals} ${node.items}`;
      if (met.has(key)) continue;
      met.add(key);
      for (const one of next) put(one);
    }
    return found[n];
  };
}

/** Where a way stands within its choice. */
function here({ choice, stance, need, treatment, clause }: Node, component: Component): string {
  if (stance === undefined) return "";
  const at = component[choice]?.stances.indexOf(stance);
  const by = treatment === undefined ? "" : stance.needs[need]?.treatments.indexOf(treatment);
  return `${at} ${need} ${by} ${clause}`;
}
