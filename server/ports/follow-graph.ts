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
  /** At once, or with turns for others in between; edits may be laid on in several calls. */
  follow(what: What, edits: Change, at: RevisionNumber): Promise<void> | void;
}

/** Edits that are followed in one turn. */
const EDITS_AT_ONCE = 500;

/**
 * Keeps something that is made of a whole graph: made when it is first asked for, afterwards brought up to the newest
 * revision by the changes alone, whoever made them. Whoever asks meanwhile waits for it. What failed is made anew.
 */
export function followGraph<What>(
  source: Pick<Store, "newestRevision" | "changeAt">,
  { begin, follow }: Maker<What>,
): () => Promise<Made<What>> {
  let kept: Made<What> | undefined;
  let last: Promise<unknown> = Promise.resolve();

  const bringUp = async (): Promise<Made<What>> => {
    const newest = (await source.newestRevision())?.number ?? 0;
    let made = kept ?? { what: await begin(newest), at: newest };
    kept = undefined;
    for (let at = made.at + 1; at <= newest; at++) {
      const change = (await source.changeAt(at)) ?? [];
      for (let from = 0; from < change.length; from += EDITS_AT_ONCE) {
        if (from > 0) await nextTurn();
        await follow(made.what, change.slice(from, from + EDITS_AT_ONCE), at);
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
