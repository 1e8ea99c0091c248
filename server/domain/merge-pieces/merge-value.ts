import { isSame } from "../is-same.ts";

/** Something that two people changed in different ways. What is not there is left out. */
export interface Conflict {
  /** Place in the piece; things of a list by their ids, e.g. `["observations", "o3", "seen"]`. */
  readonly path: readonly string[];
  readonly base?: unknown;
  readonly mine?: unknown;
  readonly theirs?: unknown;
}

/** The three readings of one value. */
export interface Three<Value> {
  readonly base: Value | undefined;
  readonly mine: Value | undefined;
  readonly theirs: Value | undefined;
}

/** The value that one of two changed; where both changed it otherwise, `tell` is told and theirs stands. */
export function mergeValue<Value>(
  { base, mine, theirs }: Three<Value>,
  path: readonly string[],
  tell: (conflict: Conflict) => void,
): Value | undefined {
  if (isSame(mine, base) || isSame(mine, theirs)) return theirs;
  if (isSame(theirs, base)) return mine;
  tell({
    path,
    ...(base === undefined ? {} : { base }),
    ...(mine === undefined ? {} : { mine }),
    ...(theirs === undefined ? {} : { theirs }),
  });
  return theirs;
}

/** Merges the members of plain objects one by one. */
export function mergeMembers<Value extends object>(
  { base, mine, theirs }: { readonly base: Value; readonly mine: Value; readonly theirs: Value },
  path: readonly string[],
  tell: (conflict: Conflict) => void,
): Value {
  const names = new Set([base, mine, theirs].flatMap((each) => Object.keys(each)));
  const of = (each: Value, name: string): unknown => (each as Record<string, unknown>)[name];
  const merged = [...names].flatMap((name) => {
    const value = mergeValue(
      { base: of(base, name), mine: of(mine, name), theirs: of(theirs, name) },
      [...path, name],
      tell,
    );
    return value === undefined ? [] : [[name, value] as const];
  });
  return Object.fromEntries(merged) as Value;
}
