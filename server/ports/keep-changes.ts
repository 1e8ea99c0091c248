import type { RevisionNumber } from "../domain/revision.ts";
import type { Store } from "./store.ts";

/** Changes that are kept, so that all who follow a commit are served by one read. */
const MOST_KEPT = 4;

/** The same read of changes, of which the last ones are kept: a revision that is there never becomes another. */
export function keepChanges(read: Store["changeAt"]): Store["changeAt"] {
  const kept = new Map<RevisionNumber, ReturnType<Store["changeAt"]>>();
  return (revision) => {
    const known = kept.get(revision);
    if (known !== undefined) return known;
    const reading = read(revision);
    kept.set(revision, reading);
    const forget = (): void => {
      if (kept.get(revision) === reading) kept.delete(revision);
    };
    // One that is not there yet can come; what failed is read again.
    reading.then((change) => change ?? forget(), forget);
    for (const old of [...kept.keys()].slice(0, -MOST_KEPT)) kept.delete(old);
    return reading;
  };
}
