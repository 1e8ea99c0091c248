import type { NeighbourhoodAsk } from "#server/domain/neighbourhood.ts";
import type { Wishes } from "#server/generator/graph-plan.ts";
import { makeGraph } from "#server/generator/make-graph.ts";
import { numberOf } from "./dating-question.ts";

const NONE = -1;

/** An ask in whole numbers. */
export interface BareAsk {
  readonly seeds: Int32Array;
  readonly region: number;
  readonly maxDepth: number;
}

export const bareAskOf = ({ seeds, regions, maxDepth }: NeighbourhoodAsk): BareAsk => ({
  seeds: Int32Array.from(seeds, numberOf),
  region: numberOf(regions[0] as string),
  maxDepth,
});

/** Numbers that are pushed one by one. */
function pile(): { push(number: number): void; numbers(): Int32Array } {
  let [array, length] = [new Int32Array(1024), 0];
  return {
    push: (number) => {
      if (length === array.length) {
        const longer = new Int32Array(length * 2);
        longer.set(array);
        array = longer;
      }
      array[length++] = number;
    },
    numbers: () => array.subarray(0, length),
  };
}

/**
 * The walk as bare as arrays allow: accepted claims sorted by subject, one row a target, whole numbers for ids; a search in
 * breadth over stamped arrays, which allocates nothing and hands over the numbers of what it found. No exceptions, no cuts,
 * no revisions, one region, nothing looked up by a text. What the walk of the mirror is measured against.
 */
export function openBareArrayWalk(wishes: Wishes): (ask: BareAsk) => {
  readonly reached: number;
  readonly claims: Int32Array;
} {
  const [subjects, objects, regions, ids] = [pile(), pile(), pile(), pile()];
  const broader = new Map<number, number>();
  for (const { kind, thing } of makeGraph(wishes)) {
    if (kind === "term" && thing.kind === "region" && thing.broader !== undefined)
      broader.set(numberOf(thing.id), numberOf(thing.broader));
    if (kind !== "claim" || thing.status !== "accepted" || !("subject" in thing)) continue;
    const targets = thing.relation === "requires" ? [...new Set(thing.ways.flat())].map(numberOf) : [NONE];
    const region = "scope" in thing && thing.scope.region !== undefined ? numberOf(thing.scope.region) : NONE;
    for (const target of targets) {
      subjects.push(numberOf(thing.subject));
      objects.push(target);
      regions.push(region);
      ids.push(numberOf(thing.id));
    }
  }
  const keys = subjects.numbers();
  const terms =
    [keys, objects.numbers(), regions.numbers()].reduce(
      (most, column) => column.reduce((a, b) => Math.max(a, b), most),
      0,
    ) + 1;
  const from = new Int32Array(terms + 1);
  for (const key of keys) from[key + 1] = (from[key + 1] as number) + 1;
  for (let key = 0; key < terms; key++) from[key + 1] = (from[key + 1] as number) + (from[key] as number);
  const sorted = (values: Int32Array): Int32Array => {
    const next = from.slice();
    const column = new Int32Array(values.length);
    for (let row = 0; row < keys.length; row++) {
      const key = keys[row] as number;
      const place = next[key] as number;
      column[place] = values[row] as number;
      next[key] = place + 1;
    }
    return column;
  };
  const [o, r, id] = [sorted(objects.numbers()), sorted(regions.numbers()), sorted(ids.numbers())];
  const scopes = scopesOf(broader);
  const [seen, depths, queue, scope] = [0, 0, 0, 0].map(() => new Int32Array(terms)) as [
    Int32Array,
    Int32Array,
    Int32Array,
    Int32Array,
  ];
  const found = new Int32Array(keys.length);
  let walk = 0;

  return ({ seeds, region, maxDepth }) => {
    walk++;
    for (const each of scopes(region)) scope[each] = walk;
    let [tail, claims] = [0, 0];
    for (let i = 0; i < seeds.length; i++) {
      const seed = seeds[i] as number;
      if (seen[seed] === walk) continue;
      seen[seed] = walk;
      depths[seed] = 0;
      queue[tail++] = seed;
    }
    for (let head = 0; head < tail; head++) {
      const term = queue[head] as number;
      const depth = depths[term] as number;
      for (let row = from[term] as number; row < (from[term + 1] as number); row++) {
        const target = o[row] as number;
        if (target === NONE) {
          found[claims++] = id[row] as number;
          continue;
        }
        const where = r[row] as number;
        if (where !== NONE && scope[where] !== walk) continue;
        found[claims++] = id[row] as number;
        if (depth === maxDepth || seen[target] === walk) continue;
        seen[target] = walk;
        depths[target] = depth + 1;
        queue[tail++] = target;
      }
    }
    return { reached: tail, claims: found.subarray(0, claims) };
  };
}

/** The regions above and below each, itself included, worked out once. */
function scopesOf(broader: ReadonlyMap<number, number>): (region: number) => Int32Array {
  const scopes = new Map<number, Set<number>>();
  const scopeOf = (region: number): Set<number> => {
    const known = scopes.get(region) ?? new Set([region]);
    scopes.set(region, known);
    return known;
  };
  for (const region of broader.keys())
    for (let above = broader.get(region); above !== undefined; above = broader.get(above)) {
      scopeOf(region).add(above);
      scopeOf(above).add(region);
    }
  const arrays = new Map([...scopes].map(([region, scope]) => [region, Int32Array.from(scope)]));
  return (region) => arrays.get(region) ?? Int32Array.of(region);
}
