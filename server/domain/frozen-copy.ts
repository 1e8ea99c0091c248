import { canonicalJson, isInOrder } from "./canonical-json.ts";
import { deepFreeze } from "./deep-freeze.ts";

/**
 * A frozen copy of a plain value, so that what its owner does with it later cannot reach who keeps the copy. What is
 * frozen throughout, with its members in order, is given back as it is: nobody can change it.
 */
export const frozenCopy = <Value>(value: Value): Value =>
  isFrozenThroughout(value) && isInOrder(value) ? value : deepFreeze(JSON.parse(canonicalJson(value)));

function isFrozenThroughout(value: unknown): boolean {
  if (typeof value !== "object" || value === null) return true;
  if (!Object.isFrozen(value)) return false;
  for (const name in value)
    if (!isFrozenThroughout((value as Readonly<Record<string, unknown>>)[name])) return false;
  return true;
}
