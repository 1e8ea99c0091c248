import type { Component } from "./components.ts";
import type { Item, Items } from "./items.ts";
import type { Need, Stance } from "./stances.ts";

/**
 * A bound from below, in which each sighting pays its share of what several could share. What has been given up already (`has`) is
 * free.
 */
export interface Relaxed {
  readonly clause: (clause: readonly Item[], has: readonly Item[]) => number;
  readonly need: (need: Need, has: readonly Item[]) => number;
  readonly stance: (stance: Stance, has: readonly Item[]) => number;
  /** All choices from this one on. */
  readonly from: (choice: number, has: readonly Item[]) => number;
}

/** Shares of a component: a price divided by the sightings that it could save. */
export function relax(component: Component, items: Items): Relaxed {
  const saves = new Map<Item, Set<string>>();
  for (const { stances } of component)
    for (const { needs } of stances)
      for (const { sighting, treatments } of needs)
        for (const { clauses } of treatments)
          for (const item of clauses.flat()) saves.set(item, (saves.get(item) ?? new Set()).add(sighting));
  const share = new Map([...saves].map(([item, by]) => [item, items.cost(item) / by.size]));

  const clause = (drops: readonly Item[], has: readonly Item[]): number => {
    let least = Number.POSITIVE_INFINITY;
    for (const item of drops) least = has.includes(item) ? 0 : Math.min(least, share.get(item) ?? 0);
    return least;
  };
  const need = ({ treatments }: Need, has: readonly Item[]): number => {
    let least = Number.POSITIVE_INFINITY;
    for (const { item, clauses } of treatments) {
      let most = 0;
      for (const drops of clauses) most = Math.max(most, clause(drops, has));
      least = Math.min(least, most + (item === undefined ? 0 : items.cost(item)));
    }
    return least;
  };
  const stance = ({ item, needs }: Stance, has: readonly Item[]): number =>
    needs.reduce((sum, one) => sum + need(one, has), item === undefined ? 0 : items.cost(item));
  const choice = (at: number, has: readonly Item[]): number =>
    (component[at]?.stances ?? []).reduce(
      (least, one) => Math.min(least, stance(one, has)),
      Number.POSITIVE_INFINITY,
    );
  const alone = component.map((_, at) => choice(at, []));
  const suffix = alone.map((_, at) => alone.slice(at).reduce((sum, one) => sum + one, 0));
  const used = component.map(
    ({ stances }) =>
      new Set(
        stances.flatMap(({ needs }) => needs.flatMap((n) => n.treatments.flatMap((t) => t.clauses.flat()))),
      ),
  );
  return {
    ...{ clause, need, stance },
    from: (at, has) => {
      let sum = suffix[at] ?? 0;
      for (let i = at; i < component.length; i++)
        if (has.some((item) => used[i]?.has(item))) sum += choice(i, has) - (alone[i] as number);
      return sum;
    },
  };
}
