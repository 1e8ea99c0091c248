import { GraphQLError } from "graphql";
import type { Store } from "../../ports/store.ts";
import { watchStore } from "./watch-store.ts";

/**
 * The same store for one request: from `deadline` milliseconds after this call on, reads and writes are refused, so that
 * a request that has taken too long does no more work. `now` counts milliseconds.
 */
export function withinDeadline(store: Store, deadline: number, now: () => number): Store {
  const end = now() + deadline;
  return watchStore(store, () => {
    if (now() > end)
      throw new GraphQLError(
        `This took longer than ${deadline} ms and was given up; ask for less at a time.`,
        {
          extensions: { code: "DEADLINE_EXCEEDED" },
        },
      );
  });
}
