import type { Edit } from "../../../domain/change.ts";
import type { Alike } from "../../../domain/proposals/alike/alike.ts";
import type { Store } from "../../../ports/store.ts";
import type { FindNamed } from "../say-edit.ts";
import { sayChange } from "../say-proposal.ts";
import { findStanding } from "./find-standing.ts";

/** Something that may be what is proposed, in words. */
export interface FoundAlike extends Alike {
  readonly says: string;
}

/** Puts what was found in words. */
export async function sayAlike(
  ports: { readonly store: Store },
  alike: readonly Alike[],
  find: FindNamed,
): Promise<readonly FoundAlike[]> {
  const edits = await Promise.all(
    alike.map(async (one): Promise<readonly Edit[]> => {
      const standing = await findStanding(ports.store, one.id);
      return standing ? [{ kind: standing.kind, before: standing.thing } as Edit] : [];
    }),
  );
  const said = await sayChange(ports, edits.flat(), find, alike.length);
  const words = new Map(said.map(({ id, before }) => [id, before]));
  return alike.map((one) => ({ ...one, says: words.get(one.id) ?? one.id }));
}
