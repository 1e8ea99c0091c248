import type { Change } from "../../domain/change.ts";
import { type Problem, problem } from "../../domain/problem.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import { LARGEST_PAGE, type Store } from "../../ports/store.ts";

/** Edits that are read at once; more takes too long and too much memory. */
const MOST_EDITS = 100_000;

/** The changes after one revision up to another, oldest first; refused (`TOO_LARGE`) where they hold too many edits. */
export async function changesBetween(
  { store }: { readonly store: Store },
  from: RevisionNumber,
  to: RevisionNumber,
): Promise<readonly Change[] | Problem> {
  const numbers = Array.from({ length: Math.max(0, to - from) }, (_, at) => from + 1 + at);
  let edits = 0;
  for (let at = 0; at < numbers.length; at += LARGEST_PAGE) {
    const counts = await store.editCounts(numbers.slice(at, at + LARGEST_PAGE));
    for (const count of counts.values()) edits += count;
    if (edits > MOST_EDITS)
      return problem(
        "TOO_LARGE",
        `Between revisions ${from} and ${to} lie more than ${MOST_EDITS} edits; choose two that lie nearer.`,
        ["to"],
      );
  }
  const changes: Change[] = [];
  for (const number of numbers) changes.push((await store.changeAt(number)) ?? []);
  return changes;
}
