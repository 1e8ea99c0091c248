import type { Change } from "../domain/change.ts";
import type { RevisionNumber } from "../domain/revision.ts";
import { nextTurn } from "./next-turn.ts";
import type { Store } from "./store.ts";

/** What is made of a whole graph, and the revision that it was made of. */
export interface Made<What> {
  readonly what: What;
  readonly at: RevisionNumber;
}

/** How something is made of a graph, and brought up to the next revision by the edits that led there. */
export interface Maker<What> {
  begin(at: RevisionNumber): Promise<What>;
  /**
   * Lays on the edits of revision `at`, with turns for others in between if they are many; or leaves all as it was and asks
   * to begin anew.
   */
  follow(what: What, edits: Change, at: RevisionNumber): Promise<"anew" | undefined>;
}

/** Edits that are laid on in one turn. */
const EDITS_AT_ONCE = 500;
/** How long to wait for what is made anew before the old is handed out again, in milliseconds. */
const WAIT_FOR_NEW = 2_000;

/** Lays on edits one by one, with turns for others in between. */
export async function layOn(edits: Change, lay: (edit: Change[number]) => void): Promise<undefined> {
  for (const [n, edit] of edits.entries()) {
    if (n > 0 && n % EDITS_AT_ONCE === 0) await nextTurn();
    lay(edit);
  }
  return undefined;
}

/**
 * Keeps something that is made of a whole graph: made when it is first asked for, afterwards brought up to the newest
 * revision by the changes alone, whoever made them. Whoever asks meanwhile waits for it; where it has to be made anew and that
 * takes long, they are given the old, which says of which revision it is. What failed is made anew.
 */
export function followGraph<What>(
  source: Pick<Store, "newestRevision" | "changeAt">,
  { begin, follow }: Maker<What>,
): () => Promise<Made<What>> {
  let kept: Made<What> | undefined;
  /** Made anew, and waited for by those who ask meanwhile, all of them together. */
  let renewing: { readonly made: Promise<void>; readonly waited: Promise<unknown> } | undefined;
  let last: Promise<unknown> = Promise.resolve();

  const renew = (at: RevisionNumber) => {
    const made = begin(at)
      .then((what) => {
        kept = { what, at };
      })
      .finally(() => {
        renewing = undefined;
      });
    const late = new Promise((resolve) => setTimeout(resolve, WAIT_FOR_NEW).unref());
    return { made, waited: Promise.race([made, late]) };
  };

  const bringUp = async (): Promise<Made<What>> => {
    const newest = (await source.newestRevision())?.number ?? 0;
    let made: Made<What> = kept ?? { what: await begin(newest), at: newest };
    for (let at = made.at + 1; at <= newest; at++) {
      const change = (await source.changeAt(at)) ?? [];
      // Half brought up, it is of no use.
      kept = undefined;
      if ((await follow(made.what, change, at)) === "anew") {
        kept = made;
        renewing ??= renew(newest);
        await renewing.waited;
        return kept;
      }
      made = { what: made.what, at };
    }
    kept = made;
    return made;
  };
  return () => {
    const made = last.then(bringUp);
    last = made.catch(() => undefined);
    return made;
  };
}
