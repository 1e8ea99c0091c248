import { canonicalJson } from "./canonical-json.ts";
import { deepFreeze } from "./deep-freeze.ts";

/** A frozen copy of a plain value, so that what its owner does with it later cannot reach who keeps the copy. */
export const frozenCopy = <Value>(value: Value): Value => deepFreeze(JSON.parse(canonicalJson(value)));
