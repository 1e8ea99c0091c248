import { compareText } from "./compare.ts";

/**
 * JSON text with one form for one value: members sorted by UTF-16 code unit, no white space (RFC 8785, for values
 * without fractions beyond what JSON.stringify prints). `undefined` members are left out.
 * Throws a TypeError on a number that JSON cannot carry.
 */
export function canonicalJson(value: unknown): string {
  if (typeof value === "number" && !Number.isFinite(value)) throw new TypeError(`JSON cannot carry ${value}`);
  if (value === null || typeof value !== "object") return JSON.stringify(value) ?? "null";
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(",")}]`;
  const members = Object.entries(value)
    .filter(([, member]) => member !== undefined)
    .sort(([a], [b]) => compareText(a, b));
  return `{${members.map(([name, member]) => `${JSON.stringify(name)}:${canonicalJson(member)}`).join(",")}}`;
}
