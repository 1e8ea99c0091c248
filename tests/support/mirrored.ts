import { isProblem } from "#server/domain/problem.ts";
import type { Store } from "#server/ports/store.ts";
import { mirroredStore } from "#server/stores/mirror/mirrored-store.ts";
import { type Mirror, type MirrorOptions, openMirror } from "#server/stores/mirror/open-mirror.ts";

/** A log for tests that look at what the mirror does, not at what it says. */
export const silent = (): void => {};

/** A test that does not look at failures is not to wait for a mirror that is tried again and again. */
const throwFailures: MirrorOptions["log"] = ({ event, error }) => {
  if (event === "mirror not built") throw new Error(String(error));
};

/** A mirror of a store, built; nothing is checked at random unless a test asks. */
export async function builtMirror(store: Store, options: Partial<MirrorOptions> = {}): Promise<Mirror> {
  const mirror = openMirror(store, { log: throwFailures, ...options });
  await mirror.built;
  return mirror;
}

/**
 * A mirrored store that never lets the newest revision be walked over by the store itself: an ask of it that the mirror did
 * not answer is thrown.
 */
export async function openMirrored(store: Store, options: Partial<MirrorOptions> = {}): Promise<Store> {
  const strict: Store = {
    ...store,
    neighbourhood: async (ask) => {
      const newest = (await store.newestRevision())?.number ?? 0;
      if (ask.at === undefined || ask.at === newest)
        throw new Error("The mirror left an ask of the newest revision to the store");
      return store.neighbourhood(ask);
    },
  };
  const mirror = await builtMirror(strict, options);
  const mirrored = mirroredStore(strict, mirror);
  return {
    ...mirrored,
    // Until it is built anew, the store is asked.
    restore: async (records) => {
      const done = await mirrored.restore(records);
      if (!isProblem(done)) await mirror.rebuild();
      return done;
    },
  };
}
