import { type Problem, problem } from "../domain/problem.ts";
import type { RevisionNumber } from "../domain/revision.ts";
import type { Store } from "../ports/store.ts";

/** The revision to read on: the one asked for, the newest if none is (0 while the graph is empty), or why there is none. */
export async function standingRevision(
  { store }: { readonly store: Store },
  asked: RevisionNumber | undefined,
): Promise<RevisionNumber | Problem> {
  const newest = (await store.newestRevision())?.number ?? 0;
  if (asked === undefined) return newest;
  if (Number.isInteger(asked) && asked >= 0 && asked <= newest) return asked;
  return problem(
    "UNKNOWN_REVISION",
    `There is no revision ${asked}; name one from 0 to ${newest}, or none for the newest.`,
    ["revision"],
  );
}
