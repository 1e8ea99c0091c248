import type { Tell } from "../ports/metrics.ts";
import { oneGauge } from "../ports/one-number.ts";
import type { Store } from "../ports/store.ts";

/** How far a process knows of the writes to its store, and how many there are of which it does not know. */
export const tellFollower =
  (store: Pick<Store, "newestWrite">, follower: { readonly sequence: number }): Tell =>
  async () => {
    // Read first, so that what is followed in between does not make it look ahead of the store.
    const newest = await store.newestWrite();
    return [
      oneGauge(
        { name: "scribeline_followed_write", help: "Number of the newest write that this process knows of." },
        follower.sequence,
      ),
      oneGauge(
        {
          name: "scribeline_writes_behind",
          help: "Writes in the store that this process does not know of yet.",
        },
        Math.max(0, newest - follower.sequence),
      ),
    ];
  };
