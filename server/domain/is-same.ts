import { canonicalJson } from "./canonical-json.ts";

/** Tells whether two plain values say the same, whatever the order of their members. */
export const isSame = (a: unknown, b: unknown): boolean =>
  a === b || (a !== undefined && b !== undefined && canonicalJson(a) === canonicalJson(b));
