import type { RevisionNumber } from "../domain/revision.ts";
import type { Store } from "./store.ts";

/** The newest revision that stood at a time (ISO 8601, UTC), as far as the clocks of those who made them agree; 0 before the first. */
export async function revisionAt(
  store: Pick<Store, "revision" | "newestRevision">,
  time: string,
): Promise<RevisionNumber> {
  const newest = await store.newestRevision();
  if (newest === undefined) return 0;
  if (newest.at <= time) return newest.number;
  let [low, high] = [0, newest.number];
  while (high - low > 1) {
    const middle = (low + high) >>> 1;
    const revision = await store.revision(middle);
    if (revision !== undefined && revision.at <= time) low = middle;
    else high = middle;
  }
  return low;
}
