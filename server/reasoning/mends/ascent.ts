import type { Found } from "./cheapest.ts";
import type { Choice } from "./components.ts";
import type { Item, Items } from "./items.ts";
import { type Relaxed, relax } from "./relaxed.ts";

/** Rounds of moving shares; each raises the bound less than the one before. */
const ROUNDS = 200;
/** So many rounds without a better bound end it. */
const PATIENCE = 40;
/** A bound that is within this part of the cheapest set known leaves so little that a search does the rest sooner. */
const NEAR = 0.002;
/** Part of its share that a sighting hands on in a round in which it does not use the thing. */
/** What becomes of that part from round to round. */
const DECAY = 0.98;
const HANDED_ON = 0.3;

/** A bound, the shares it comes from, and the cheapest set met on the way. */
export interface Ascent {
  readonly relaxed: () => Relaxed;
  readonly atLeast: number;
  readonly found: Found;
}

/** A share: what one sighting pays of one thing. */
interface Slot {
  readonly sighting: string;
  readonly item: Item;
  readonly at: number;
}

/** Choices with items as costs and clauses as numbers of slots. */
interface Flat {
  readonly unit: number;
  readonly stances: readonly {
    readonly item: Item | undefined;
    readonly cost: number;
    readonly needs: readonly (readonly {
      readonly item: Item | undefined;
      readonly cost: number;
      readonly clauses: readonly (readonly number[])[];
    }[])[];
  }[];
}

/**
 * Moves the shares of each thing to the sightings that would use it at its share, so that the bound rises; what they would use together is a set
 * that will do. Where the two meet nothing is left to search (dual ascent with a primal heuristic, as for the siting of plants; Erlenkotter 1978).
 */
export function ascend(
  choices: readonly Choice[],
  items: Items,
  {
    rounds = ROUNDS,
    enough = Number.POSITIVE_INFINITY,
  }: { readonly rounds?: number; readonly enough?: number } = {},
): Ascent {
  const { flat, slots } = flatten(choices, items);
  const bySlot = [...Map.groupBy(slots, ({ item }) => item).values()];
  const shares = new Float64Array(slots.length);
  for (const of of bySlot) for (const { at, item } of of) shares[at] = items.cost(item) / of.length;
  const shared = bySlot.filter((of) => of.length > 1);

  let best: { readonly atLeast: number; readonly shares: Float64Array } | undefined;
  let found: Found | undefined;
  let idle = 0;
  for (let round = 0; round < rounds && idle < PATIENCE; round++) {
    const { atLeast, used, set } = cheapestByShares(flat, shares, slots);
    for (const { unit, apart } of choices)
      for (const one of apart)
        if (set.originals.has(unit) && set.originals.has(one.unit)) set.items.add(one.item);
    const cost = items.costOf([...set.items]);
    if (found === undefined || cost < found.cost)
      found = { items: [...set.items].sort((a, b) => a - b), cost };
    idle++;
    if (best === undefined || atLeast > best.atLeast + 1) {
      best = { atLeast, shares: shares.slice() };
      idle = 0;
    }
    const isNear = Math.min(found.cost, enough) - best.atLeast < Math.max(0.5, NEAR * found.cost);
    if (isNear || !handOn(shared, shares, used, HANDED_ON * DECAY ** round)) break;
  }
  const reached = best ?? { atLeast: 0, shares };
  return {
    relaxed: () => relax(sharesBySighting(slots, reached.shares), items),
    atLeast: reached.atLeast,
    found: found ?? { items: [], cost: 0 },
  };
}

function flatten(
  choices: readonly Choice[],
  items: Items,
): { readonly flat: readonly Flat[]; readonly slots: readonly Slot[] } {
  const slots: Slot[] = [];
  const known = new Map<string, Map<Item, number>>();
  const slotOf = (sighting: string, item: Item): number => {
    const own = known.get(sighting) ?? new Map<Item, number>();
    known.set(sighting, own);
    const before = own.get(item);
    if (before !== undefined) return before;
    own.set(item, slots.length);
    slots.push({ sighting, item, at: slots.length });
    return slots.length - 1;
  };
  const costOf = (item: Item | undefined): number => (item === undefined ? 0 : items.cost(item));
  const flat = choices.map(({ unit, stances }) => ({
    unit,
    stances: stances.map(({ item, needs }) => ({
      ...{ item, cost: costOf(item) },
      needs: needs.map(({ sighting, treatments }) =>
        treatments.map((treatment) => ({
          ...{ item: treatment.item, cost: costOf(treatment.item) },
          clauses: treatment.clauses.map((clause) => clause.map((drop) => slotOf(sighting, drop))),
        })),
      ),
    })),
  }));
  return { flat, slots };
}

interface ByShares {
  readonly atLeast: number;
  /** Slots in use. */
  readonly used: Uint8Array;
  readonly set: { readonly items: Set<Item>; readonly originals: Set<number> };
}

/** The cheapest of every choice at these shares: their sum, what they use, and the set that this comes to. */
function cheapestByShares(flat: readonly Flat[], shares: Float64Array, slots: readonly Slot[]): ByShares {
  const used = new Uint8Array(slots.length);
  const items = new Set<Item>();
  const originals = new Set<number>();
  let atLeast = 0;
  const leastOf = (clause: readonly number[]): number => {
    let least = clause[0] as number;
    for (const slot of clause) if ((shares[slot] as number) < (shares[least] as number)) least = slot;
    return least;
  };
  const priceOf = ({ cost, clauses }: Flat["stances"][number]["needs"][number][number]): number => {
    let most = 0;
    for (const clause of clauses) most = Math.max(most, shares[leastOf(clause)] as number);
    return cost + most;
  };
  const needOf = (treatments: Flat["stances"][number]["needs"][number]): number => {
    let least = Number.POSITIVE_INFINITY;
    for (const treatment of treatments) least = Math.min(least, priceOf(treatment));
    return least;
  };
  for (const { unit, stances } of flat) {
    let least = Number.POSITIVE_INFINITY;
    let taken: Flat["stances"][number] | undefined;
    for (const stance of stances) {
      let sum = stance.cost;
      for (const need of stance.needs) {
        if (sum >= least) break;
        sum += needOf(need);
      }
      if (sum < least) [least, taken] = [sum, stance];
    }
    atLeast += least;
    if (taken === undefined) continue;
    if (taken.item === undefined) originals.add(unit);
    else items.add(taken.item);
    for (const need of taken.needs) {
      const price = needOf(need);
      const treatment = need.find((one) => priceOf(one) === price);
      if (treatment?.item !== undefined) items.add(treatment.item);
      for (const clause of treatment?.clauses ?? []) {
        const slot = leastOf(clause);
        used[slot] = 1;
        items.add((slots[slot] as Slot).item);
      }
    }
  }
  return { atLeast, used, set: { items, originals } };
}

/** Moves shares from sightings that do not use a thing to those that do; says whether any moved. */
function handOn(
  shared: readonly (readonly Slot[])[],
  shares: Float64Array,
  used: Uint8Array,
  share: number,
): boolean {
  let hasMoved = false;
  for (const of of shared) {
    let users = 0;
    for (const { at } of of) users += used[at] as number;
    if (users === 0 || users === of.length) continue;
    let handed = 0;
    for (const { at } of of) {
      if (used[at] === 1) continue;
      const part = share * (shares[at] as number);
      shares[at] = (shares[at] as number) - part;
      handed += part;
    }
    for (const { at } of of) if (used[at] === 1) shares[at] = (shares[at] as number) + handed / users;
    hasMoved ||= handed > 0;
  }
  return hasMoved;
}

function sharesBySighting(
  slots: readonly Slot[],
  shares: Float64Array,
): ReadonlyMap<string, ReadonlyMap<Item, number>> {
  const found = new Map<string, Map<Item, number>>();
  for (const { sighting, item, at } of slots) {
    const own = found.get(sighting) ?? new Map<Item, number>();
    own.set(item, shares[at] as number);
    found.set(sighting, own);
  }
  return found;
}
