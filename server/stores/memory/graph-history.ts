import { checkCommit } from "../../chain/check-commit.ts";
import { linkRevision } from "../../chain/link-revision.ts";
import type { Change, Edit, Graph } from "../../domain/change.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import type { Revision, RevisionNumber } from "../../domain/revision.ts";
import type { Commit } from "../../ports/store.ts";

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
  const graph = graphAt(history);
  const refusal = checkCommit(graph, history.length, commit.change, commit.expected);
  if (isProblem(refusal)) return refusal;
  const revision = linkRevision(commit.change, commit, history.at(-1)?.revision);
  return [...history, { revision, change: commit.change, graph: applied(graph, commit.change) }];
}

function applied(graph: Graph, change: Change): Graph {
  const terms = new Map(graph.terms);
  const claims = new Map(graph.claims);
  const sources = new Map(graph.sources);
  const put = <Thing extends { readonly id: string }>(
    things: Map<string, Thing>,
    { before, after }: { readonly before?: Thing; readonly after?: Thing },
  ): void => {
    if (after) things.set(after.id, after);
    else if (before) things.delete(before.id);
  };
  const apply = (edit: Edit): void => {
    if (edit.kind === "term") put(terms, edit);
    else if (edit.kind === "claim") put(claims, edit);
    else put(sources, edit);
  };
  change.forEach(apply);
  return { terms, claims, sources };
}
