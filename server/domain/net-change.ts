import type { Change, Edit } from "./change.ts";
import { compareText } from "./compare.ts";
import { idOfEdit } from "./graph-view.ts";
import { isSame } from "./is-same.ts";

/**
 * What changes made one after the other come to: one edit a thing, from how it stood before the first to how it stands after the
 * last; nothing of what is again as it was. Sorted by kind (claims, terms, sources) and id.
 */
export function netChange(changes: Iterable<Change>): Change {
  const edits = new Map<string, Edit>();
  for (const change of changes)
    for (const edit of change) {
      const key = `${edit.kind} ${idOfEdit(edit)}`;
      const { before } = edits.get(key) ?? edit;
      const { kind, after } = edit;
      edits.set(key, { kind, ...(before ? { before } : {}), ...(after ? { after } : {}) } as Edit);
    }
  return [...edits.values()].filter(({ before, after }) => !isSame(before, after)).sort(compareEdits);
}

const KINDS: readonly Edit["kind"][] = ["claim", "term", "source"];

const compareEdits = (a: Edit, b: Edit): number =>
  KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind) || compareText(idOfEdit(a), idOfEdit(b));
