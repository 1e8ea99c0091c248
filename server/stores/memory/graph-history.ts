import { changeText } from "../../chain/change-text.ts";
import { checkCommit } from "../../chain/check-commit.ts";
import { linkRevision } from "../../chain/link-revision.ts";
import type { Change, Edit, Graph } from "../../domain/change.ts";
import { applyChange } from "../../domain/change-graph.ts";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import { idOfEdit, viewOfGraph } from "../../domain/graph-view.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import type { Revision, RevisionNumber } from "../../domain/revision.ts";
import type { Commit, PastEdit } from "../../ports/store.ts";

/** One accepted change with its revision, and the whole graph after it. */
export interface Step {
  readonly revision: Revision;
  readonly change: Change;
  readonly graph: Graph;
}
/** All steps, oldest first. A value: a commit makes a new one. */
export type History = readonly Step[];

const EMPTY_GRAPH: Graph = { terms: new Map(), claims: new Map(), sources: new Map() };

/** The graph as it stood. Throws a RangeError if there is no such revision. */
export function graphAt(history: History, at: RevisionNumber = history.length): Graph {
  if (at === 0) return EMPTY_GRAPH;
  const step = history[at - 1];
  if (step === undefined) throw new RangeError(`There is no revision ${at}; the newest is ${history.length}`);
  return step.graph;
}

/** The history with one more step, or why the change is refused. */
export function extendHistory(history: History, commit: Commit): History | Problem {
  const { change, expected } = commit;
  const before = graphAt(history);
  const refusal = checkCommit(viewOfGraph(before), history.length, change, expected);
  if (refusal !== undefined) return refusal;
  const graph = applyChange(before, change);
  if (isProblem(graph)) return graph;
  const revision = deepFreeze(linkRevision(changeText(change), commit, history.at(-1)?.revision));
  return [...history, { revision, change, graph }];
}

/** Every edit of one thing, oldest first. */
export const editsOf = (history: History, kind: Edit["kind"], id: string): readonly PastEdit[] =>
  history.flatMap(({ revision, change }) =>
    change.filter((edit) => edit.kind === kind && idOfEdit(edit) === id).map((edit) => ({ revision, edit })),
  );
