import { print } from "graphql";
import { createClient } from "graphql-ws";
import type { Live } from "./live.ts";

/** Milliseconds before the second try; each next waits longer, up to the longest. */
const FIRST_PAUSE = 500;
const LONGEST_PAUSE = 15_000;
/** Milliseconds between two signs of life. */
const SIGNS_EVERY = 20_000;

/** Opens the connection when something is followed, and closes it a moment after nothing is. */
export function openLive(address: string): Live {
  const client = createClient({
    url: address,
    retryAttempts: 0,
    lazyCloseTimeout: 1000,
    keepAlive: SIGNS_EVERY,
    // Each that follows says for itself that the connection was lost.
    onNonLazyError: () => {},
  });
  return {
    follow: ({ document, variables, take, tell = () => {} }) => {
      let isOver = false;
      let failures = 0;
      let endPause = (): void => {};
      let end = (): void => {};
      const query = print(document);
      const once = (): Promise<void> =>
        new Promise((resolve) => {
          end = client.subscribe(
            { query, variables: variables() as Record<string, unknown> },
            {
              next: ({ data, errors }) => {
                if (isOver || errors || !data) return;
                failures = 0;
                tell("live");
                take(data as Parameters<typeof take>[0]);
              },
              error: () => resolve(),
              complete: () => resolve(),
            },
          );
        });
      const pause = (): Promise<void> =>
        new Promise((resolve) => {
          const longest = Math.min(FIRST_PAUSE * 2 ** failures++, LONGEST_PAUSE);
          // Not all at once, where a server comes back.
          const timer = setTimeout(done, longest * (0.5 + Math.random() / 2));
          function done(): void {
            clearTimeout(timer);
            window.removeEventListener("online", done);
            resolve();
          }
          endPause = done;
          window.addEventListener("online", done);
        });
      const run = async (): Promise<void> => {
        tell("connecting");
        while (!isOver) {
          await once();
          if (isOver) return;
          tell("lost");
          await pause();
        }
      };
      void run();
      return () => {
        isOver = true;
        end();
        endPause();
      };
    },
  };
}
