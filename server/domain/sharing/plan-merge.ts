import type { Change, Edit } from "../change.ts";
import { compareText } from "../compare.ts";
import { idOfEdit, type Standing } from "../graph-view.ts";
import { isSame } from "../is-same.ts";
import { namesOf } from "../names-of.ts";
import type { SharedEdit } from "./shared-changes.ts";

/** A change to propose: edits that need each other, and nothing else. */
export interface MergeGroup {
  readonly change: Change;
  /** What the other house did, edit by edit. */
  readonly shared: readonly SharedEdit[];
  /** Ids of things that stand here otherwise than they stood there before: both houses changed them. */
  readonly changedOnBothSides: readonly string[];
}

/** How what another house accepted comes to what stands here. */
export interface MergePlan {
  readonly groups: readonly MergeGroup[];
  /** Ids of what stands here already, or is gone here too. */
  readonly same: readonly string[];
  /** Ids of what they withdrew and stands otherwise here: it is left. */
  readonly left: readonly string[];
}

/**
 * Lays what another house accepted beside what stands here, thing by thing: the same id with the same body is nothing, with another
 * body a correction; what is not here is added; what they withdrew is withdrawn if it stands here as it stood there.
 */
export function planMerge(
  shared: readonly SharedEdit[],
  standing: (edit: Edit) => NonNullable<Edit["before"]> | undefined,
): MergePlan {
  const [same, left, both]: [string[], string[], Set<string>] = [[], [], new Set()];
  const made = new Map<Edit, SharedEdit>();
  for (const one of shared) {
    const { kind, before, after } = one.edit;
    const [id, own] = [idOfEdit(one.edit), standing(one.edit)];
    if (isSame(own ?? null, after ?? null)) same.push(id);
    else if (after === undefined && !isSame(own, before)) left.push(id);
    else {
      if (own !== undefined && !isSame(own, before)) both.add(id);
      made.set({ kind, ...(own ? { before: own } : {}), ...(after ? { after } : {}) } as Edit, one);
    }
  }
  const groups = groupsOf([...made.keys()]).map((change) => ({
    change,
    shared: change.map((edit) => made.get(edit) as SharedEdit),
    changedOnBothSides: change.map(idOfEdit).filter((id) => both.has(id)),
  }));
  return { groups, same, left };
}

/** Edits that have to be made together: one that names a thing that another adds or withdraws. */
function groupsOf(edits: readonly Edit[]): readonly Change[] {
  const comesOrGoes = new Map(
    edits
      .filter(({ before, after }) => before === undefined || after === undefined)
      .map((edit) => [idOfEdit(edit), edit]),
  );
  const head = new Map<Edit, Edit>(edits.map((edit) => [edit, edit]));
  const headOf = (edit: Edit): Edit => {
    let top = edit;
    for (let next = head.get(top); next !== undefined && next !== top; next = head.get(top)) top = next;
    for (let at = edit; at !== top; ) {
      const next = head.get(at) ?? top;
      head.set(at, top);
      at = next;
    }
    return top;
  };
  for (const edit of edits)
    for (const id of namedBy(edit)) {
      const other = comesOrGoes.get(id);
      if (other !== undefined) head.set(headOf(edit), headOf(other));
    }
  const groups = new Map<Edit, Edit[]>();
  for (const edit of edits) {
    const top = headOf(edit);
    const group = groups.get(top);
    if (group === undefined) groups.set(top, [edit]);
    else group.push(edit);
  }
  return [...groups.values()]
    .map((group) => group.toSorted((a, b) => compareText(idOfEdit(a), idOfEdit(b))))
    .sort((a, b) => compareText(idOfEdit(a[0] as Edit), idOfEdit(b[0] as Edit)));
}

const namedBy = ({ kind, before, after }: Edit): readonly string[] =>
  [before, after]
    .filter((thing) => thing !== undefined)
    .flatMap((thing) => namesOf({ kind, thing } as Standing).map(({ id }) => id));
