import type { Change, Edit } from "./change.ts";

/** How many things stand: by kind of thing ("claim"), and by what it is counted under ("claim requires", "term tool"). */
export type Tally = Readonly<Record<string, number>>;

/** What all things of a kind are counted under, or those of one kind of term or one relation. */
export const tallyKey = (kind: Edit["kind"], what?: string): string =>
  what === undefined ? kind : `${kind} ${what}`;

/** The tally after a change; what stands no more is left out. */
export function tallyAfter(before: Tally, change: Change): Tally {
  const after: Record<string, number> = { ...before };
  for (const edit of change)
    for (const side of ["before", "after"] as const)
      for (const key of keysOf(edit, side)) after[key] = (after[key] ?? 0) + (side === "after" ? 1 : -1);
  return Object.fromEntries(Object.entries(after).filter(([, count]) => count !== 0));
}

function keysOf(edit: Edit, side: "before" | "after"): readonly string[] {
  const { kind } = edit;
  if (edit[side] === undefined) return [];
  if (edit.kind === "source") return [tallyKey(kind)];
  const what = edit.kind === "term" ? edit[side]?.kind : edit[side]?.relation;
  return [tallyKey(kind), tallyKey(kind, what)];
}
