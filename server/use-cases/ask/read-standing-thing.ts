import type { Change, Edit } from "../../domain/change.ts";
import { kindOfId } from "../../domain/kind-of-id.ts";
import type { Store } from "../../ports/store.ts";
import { findThing } from "./find-changed-since.ts";

/** A term, claim or source as it stands, as the edit that would take it out; nothing where there is none. */
export async function readStandingThing({ store }: { readonly store: Store }, id: string): Promise<Change> {
  const kind = kindOfId(id);
  const newest = (await store.newestRevision())?.number ?? 0;
  const before = kind && (await findThing(store, kind, id, newest));
  return before ? [{ kind, before } as Edit] : [];
}
