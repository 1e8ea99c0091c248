import type { Change } from "../domain/change.ts";
import { checkChange } from "../domain/check-graph.ts";
import type { GraphView } from "../domain/graph-view.ts";
import { type Problem, problem } from "../domain/problem.ts";
import type { RevisionNumber } from "../domain/revision.ts";
import { checkEdits } from "./check-edits.ts";

/**
 * Why a store refuses a change of the graph that `view` shows, the most urgent reason alone: made on another revision
 * (`CHANGED_MEANWHILE`), edits that do not fit what stands (`checkEdits`), or the first thing `checkChange` finds.
 */
export function checkCommit(
  view: GraphView,
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
  return checkEdits(change, view) ?? checkChange(change, view)[0];
}
