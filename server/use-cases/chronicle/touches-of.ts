import type { Change, Edit } from "../../domain/change.ts";
import { idOfEdit, type Standing } from "../../domain/graph-view.ts";
import { id as idOf, type TermId } from "../../domain/ids.ts";
import { namesOf } from "../../domain/names-of.ts";
import { ancestors, broaderTerms } from "../../domain/region.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Store } from "../../ports/store.ts";

/** The ids of what an edit is about and what it names before or after, and the regions among them with all above them. */
export type Touches = (edit: Edit) => ReadonlySet<string>;

/** What each edit of a change touches, with the regions as they lie on a revision. */
export async function touchesOf(
  { store }: { readonly store: Store },
  change: Change,
  at: RevisionNumber,
): Promise<Touches> {
  const named = new Map<Edit, ReadonlySet<string>>(change.map((edit) => [edit, namedBy(edit)]));
  const regions = new Set([...named.values()].flatMap((ids) => [...ids].filter(isRegion)));
  // Regions with what they lie within come in one.
  const { terms } = await store.neighbourhood({
    ...{ seeds: [...regions].map((region) => idOf<"term">(region)), regions: [], maxDepth: 0, at },
  });
  const broader = broaderTerms(terms);
  return (edit) => {
    const ids = named.get(edit) ?? namedBy(edit);
    const above = [...ids].filter(isRegion).flatMap((region) => ancestors(region as TermId, broader));
    return new Set([...ids, ...above]);
  };
}

const isRegion = (id: string): boolean => id.startsWith("region.");

function namedBy(edit: Edit): ReadonlySet<string> {
  const sides = [edit.before, edit.after].filter((thing) => thing !== undefined);
  const named = sides.flatMap((thing) => namesOf({ kind: edit.kind, thing } as Standing).map(({ id }) => id));
  return new Set([idOfEdit(edit), ...named]);
}
