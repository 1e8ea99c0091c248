type Named = { readonly id: string };
const isNamed = (value: unknown): value is Named =>
  typeof value === "object" && value !== null && typeof (value as { id?: unknown }).id === "string";
const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/**
 * Gives back `fresh` with every part that says the same as in `old` replaced by the old object, at any depth; all of
 * `old` if nothing differs. Plain JSON values. Entries of a list are matched by their `id`, else by their place.
 */
export function keepSame<Value>(old: Value | undefined, fresh: Value): Value {
  if (Object.is(old, fresh) || old === undefined) return fresh;
  if (Array.isArray(old) && Array.isArray(fresh)) return keepList(old, fresh) as Value;
  if (isRecord(old) && isRecord(fresh)) {
    const keys = Object.keys(fresh);
    const kept = Object.fromEntries(keys.map((key) => [key, keepSame(old[key], fresh[key])]));
    const isUnchanged =
      keys.length === Object.keys(old).length && keys.every((key) => kept[key] === old[key]);
    return (isUnchanged ? old : kept) as Value;
  }
  return fresh;
}

function keepList(old: readonly unknown[], fresh: readonly unknown[]): readonly unknown[] {
  const byId = new Map(old.filter(isNamed).map((each) => [each.id, each]));
  const kept = fresh.map((each, i) => keepSame(isNamed(each) ? byId.get(each.id) : old[i], each));
  return kept.length === old.length && kept.every((each, i) => each === old[i]) ? old : kept;
}
