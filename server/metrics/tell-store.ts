import type { Tell } from "../ports/metrics.ts";
import { oneGauge } from "../ports/one-number.ts";
import type { Store } from "../ports/store.ts";

/** Where the store stands; silent where it does not answer. */
export const tellStore =
  (store: Store): Tell =>
  async () => {
    const [newest, write] = await Promise.all([store.newestRevision(), store.newestWrite()]);
    return [
      oneGauge(
        { name: "scribeline_revision", help: "Number of the newest revision of the graph." },
        newest?.number ?? 0,
      ),
      oneGauge(
        { name: "scribeline_store_write", help: "Number of the newest write that the store has kept." },
        write,
      ),
    ];
  };
