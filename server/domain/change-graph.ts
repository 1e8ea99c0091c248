import type { Change, Edit, Graph } from "./change.ts";
import { idOfEdit } from "./graph-view.ts";
import { isSame } from "./is-same.ts";
import { type Problem, problem } from "./problem.ts";

/**
 * The graph with the change made; the one given stays as it is. Refuses (`STALE_CHANGE`, with the number of the edit as
 * path) if what an edit has as `before` is not what stands. Edits are made in order.
 */
export function applyChange(graph: Graph, change: Change): Graph | Problem {
  const [terms, claims, sources] = [new Map(graph.terms), new Map(graph.claims), new Map(graph.sources)];
  const places = { term: terms, claim: claims, source: sources } as const;
  for (const [i, edit] of change.entries()) {
    const place = places[edit.kind] as Map<string, unknown>;
    const id = idOfEdit(edit);
    if (!isSame(place.get(edit.before?.id ?? id), edit.before)) return stale(edit, i);
    if (edit.before && edit.before.id !== id) return renamed(edit, i);
    if (edit.after) place.set(id, edit.after);
    else place.delete(id);
  }
  return { terms, claims, sources };
}

/** The change that takes the change back: made after it, it gives the graph that was before. */
export function invertChange(change: Change): Change {
  return change.toReversed().map(
    ({ kind, before, after }) =>
      ({
        kind,
        ...(after === undefined ? {} : { before: after }),
        ...(before === undefined ? {} : { after: before }),
      }) as Edit,
  );
}

function stale(edit: Edit, i: number): Problem {
  const what = `${edit.kind} ${idOfEdit(edit)}`;
  const why = edit.before ? `is not as the change found it` : `stands already`;
  return problem(
    "STALE_CHANGE",
    `The ${what} ${why}; read the graph again and make the change on what stands now.`,
    [i],
  );
}

const renamed = (edit: Edit, i: number): Problem =>
  problem(
    "WRONG_FORMAT",
    `The change turns ${edit.before?.id} into ${edit.after?.id}; withdraw the one and add the other in two edits.`,
    [i],
  );
