import { canonicalJson, isInOrder } from "./canonical-json.ts";
import { deepFreeze } from "./deep-freeze.ts";

/** Large lists known to be frozen throughout with their members in order. */
const kept = new WeakSet<object>();

/**
 * A frozen copy of a plain value, so that what its owner does with it later cannot reach who keeps the copy. What is
 * frozen throughout, with its members in order, is given back as it is: nobody can change it.
 */
export const frozenCopy = <Value>(value: Value): Value =>
  isFrozenInOrder(value) ? value : deepFreeze(JSON.parse(canonicalJson(value)));

/** Freezes a list whose entries are frozen throughout, with their members in order, and remembers it. Returns it. */
export function keepFrozen<List extends readonly unknown[]>(list: List): List {
  kept.add(Object.freeze(list));
  return list;
}

/** Whether a list was given to `keepFrozen`: it needs no look any more. */
export const isKeptFrozen = (list: readonly unknown[]): boolean => kept.has(list);

function isFrozenInOrder(value: unknown): boolean {
  if (typeof value !== "object" || value === null) return isInOrder(value);
  if (kept.has(value)) return true;
  if (!Object.isFrozen(value)) return false;
  if (Array.isArray(value)) return value.every(isFrozenInOrder);
  let last: string | undefined;
  for (const name in value) {
    if (last !== undefined && name < last) return false;
    if (!isFrozenInOrder((value as Readonly<Record<string, unknown>>)[name])) return false;
    last = name;
  }
  return true;
}
