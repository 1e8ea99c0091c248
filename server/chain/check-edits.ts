import { canonicalJson } from "../domain/canonical-json.ts";
import type { Change, Edit } from "../domain/change.ts";
import { type GraphView, idOfEdit } from "../domain/graph-view.ts";
import { type Problem, problem } from "../domain/problem.ts";

/**
 * Refuses a change that cannot be laid on what stands: no edit at all (`EMPTY_LIST`), an edit of nothing or one that
 * renames (`WRONG_FORMAT`), two edits of one thing (`DUPLICATE_ID`), or a `before` that is not what stands
 * (`STALE_CHANGE`). Whether the result is a sound graph is not looked at here.
 */
export function checkEdits(change: Change, view: GraphView): Problem | undefined {
  if (change.length === 0) return problem("EMPTY_LIST", "The change holds no edit; add at least one.");
  const seen = { term: new Set<string>(), claim: new Set<string>(), source: new Set<string>() };
  for (const [index, edit] of change.entries()) {
    const { kind, before, after } = edit;
    const id = idOfEdit(edit);
    if (id === "" || (before && after && before.id !== after.id))
      return problem(
        "WRONG_FORMAT",
        `Edit ${index + 1} must name one ${kind}, before, after or both, under one id; withdraw the old one and add the new one instead of renaming.`,
        [index],
      );
    if (seen[kind].has(id))
      return problem("DUPLICATE_ID", `The change edits the ${kind} ${id} twice; make one edit of it.`, [
        index,
      ]);
    seen[kind].add(id);
    const text = before && canonicalJson(before);
    if (!(view.stands?.(kind, id, text) ?? textOf(view, kind, id) === text))
      return problem("STALE_CHANGE", staleMessage(edit, findStanding(view, kind, id) !== undefined), [index]);
  }
  return undefined;
}

/** What stands, as canonical JSON. */
function textOf(view: GraphView, kind: Edit["kind"], id: string): string | undefined {
  const thing = findStanding(view, kind, id);
  return thing && canonicalJson(thing);
}

const findStanding = (view: GraphView, kind: Edit["kind"], id: string) =>
  ({ term: view.findTerm, claim: view.findClaim, source: view.findSource })[kind](id);

function staleMessage(edit: Edit, stands: boolean): string {
  const name = `${edit.kind} ${idOfEdit(edit)}`;
  if (!stands) return `The ${name} does not stand any more; read the graph again and make the change anew.`;
  if (edit.before === undefined)
    return `The ${name} stands already; choose another id, or change the one that stands.`;
  return `The ${name} was changed meanwhile; read it again and make the change anew.`;
}
