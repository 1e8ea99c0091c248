import type { Change, Edit, Graph } from "../domain/change.ts";
import type { Problem } from "../domain/problem.ts";
import { problem } from "../domain/problem.ts";
import type { RevisionNumber } from "../domain/revision.ts";
import { checkEdits } from "./check-edits.ts";

/** What stands in a graph under a kind and an id. */
export const findIn =
  (graph: Graph) =>
  (kind: Edit["kind"], id: string): { readonly id: string } | undefined =>
    ({ term: graph.terms, claim: graph.claims, source: graph.sources })[kind].get(id);

/**
 * Everything for which a store refuses a change of the graph that stands, most urgent first: made on another revision
 * (`CHANGED_MEANWHILE`), edits that do not fit what stands, a result that is no sound graph.
 */
export function checkCommit(
  graph: Graph,
  newest: RevisionNumber,
  change: Change,
  expected: RevisionNumber | undefined,
): Problem | undefined {
  if (expected !== undefined && expected !== newest)
    return problem(
      "CHANGED_MEANWHILE",
      `The change was made on revision ${expected}, but the newest is ${newest}; read what changed and make the change anew.`,
      ["expected"],
    );
  return checkEdits(change, findIn(graph));
}
