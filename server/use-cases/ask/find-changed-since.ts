import { canonicalJson } from "../../domain/canonical-json.ts";
import type { Edit } from "../../domain/change.ts";
import { id as idOf } from "../../domain/ids.ts";
import { kindOfId } from "../../domain/kind-of-id.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Store } from "../../ports/store.ts";

/** One thing on two revisions, as the one edit that would lead from the first to the second. */
export interface ChangedSince {
  readonly edit: Edit;
  readonly before: RevisionNumber;
  readonly after: RevisionNumber;
}

/**
 * How a term, claim or source of the newest revision differs from the same on an earlier one, which there is. Nothing
 * where it is as it was, whatever it was in between, or where it is on neither.
 */
export async function findChangedSince(
  { store }: { readonly store: Store },
  id: string,
  before: RevisionNumber,
): Promise<ChangedSince | undefined> {
  const kind = kindOfId(id);
  const after = (await store.newestRevision())?.number;
  if (kind === undefined || after === undefined) return undefined;
  const [was, is] = [await findThing(store, kind, id, before), await findThing(store, kind, id, after)];
  if (canonicalJson(was ?? null) === canonicalJson(is ?? null)) return undefined;
  const edit = { kind, ...(was ? { before: was } : {}), ...(is ? { after: is } : {}) } as Edit;
  return { edit, before, after };
}

/** A term, claim or source as it stood at a revision. */
export async function findThing(store: Store, kind: Edit["kind"], id: string, at: RevisionNumber) {
  if (kind === "term") return (await store.terms([idOf(id)], at)).get(idOf(id));
  if (kind === "claim") return (await store.claims([idOf(id)], at)).get(idOf(id));
  return (await store.sources([idOf(id)], at)).get(idOf(id));
}
