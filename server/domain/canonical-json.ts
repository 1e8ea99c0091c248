import { compareText } from "./compare.ts";

/**
 * JSON text with one form for one value: members sorted by UTF-16 code unit, no white space (RFC 8785, for values
 * without fractions beyond what JSON.stringify prints). `undefined` members are left out.
 * Throws a TypeError on a number that JSON cannot carry.
 */
export const canonicalJson = (value: unknown): string =>
  isInOrder(value) ? JSON.stringify(value) : inOrder(value);

/** Whether a plain value has its members in the order already and holds nothing that JSON would leave out or alter. */
export function isInOrder(value: unknown): boolean {
  if (typeof value === "string" || typeof value === "boolean" || value === null) return true;
  if (typeof value === "number") return Number.isFinite(value);
  if (typeof value !== "object") return false;
  if (Array.isArray(value)) {
    for (let at = 0; at < value.length; at++) if (!isInOrder(value[at])) return false;
    return true;
  }
  let last: string | undefined;
  for (const name in value) {
    if (last !== undefined && name < last) return false;
    if (!isInOrder((value as Readonly<Record<string, unknown>>)[name])) return false;
    last = name;
  }
  return true;
}

function inOrder(value: unknown): string {
  if (typeof value === "number" && !Number.isFinite(value)) throw new TypeError(`JSON cannot carry ${value}`);
  if (value === null || typeof value !== "object") return JSON.stringify(value) ?? "null";
  if (Array.isArray(value)) return `[${value.map(inOrder).join(",")}]`;
  const members = Object.entries(value)
    .filter(([, member]) => member !== undefined)
    .sort(([a], [b]) => compareText(a, b));
  return `{${members.map(([name, member]) => `${JSON.stringify(name)}:${inOrder(member)}`).join(",")}}`;
}
