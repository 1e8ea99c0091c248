import { isProblem } from "../../domain/problem.ts";
import type { Store } from "../../ports/store.ts";
import type { Mirror } from "./open-mirror.ts";

/**
 * The same store, whose neighbourhoods at the newest revision come from a mirror where it has them. A commit resolves when
 * the mirror is at its revision; everything else goes to the store.
 */
export const mirroredStore = (store: Store, mirror: Mirror): Store => ({
  ...store,
  neighbourhood: async (ask) => (await mirror.neighbourhood(ask)) ?? store.neighbourhood(ask),
  commit: async (...commit) => {
    const done = await store.commit(...commit);
    if (!isProblem(done)) await mirror.reach(done.number);
    return done;
  },
  restore: async (records) => {
    const done = await store.restore(records);
    if (!isProblem(done)) void mirror.rebuild({ atOnceFromStore: true });
    return done;
  },
  close: async () => {
    await mirror.stop();
    await store.close();
  },
});
