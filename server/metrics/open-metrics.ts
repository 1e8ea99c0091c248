import type { Tell } from "../ports/metrics.ts";
import type { Store } from "../ports/store.ts";
import type { Weigher } from "../ports/weigher.ts";
import { collectMetrics } from "./collect-metrics.ts";
import { countOperations, type EndedOperation } from "./count-operations.ts";
import { countRequests, type RequestCount } from "./count-requests.ts";
import { countStoreCalls } from "./count-store-calls.ts";
import { countWeighings } from "./count-weighings.ts";
import { MEDIA_TYPES, printMetrics } from "./print-metrics.ts";
import { tellStore } from "./tell-store.ts";
import { watchProcess } from "./watch-process.ts";

/** The numbers of one server: what is counted is reached through it. */
export interface Metrics {
  /** The store and the weigher as they were given, counted. */
  readonly store: Store;
  readonly weigher: Weigher;
  readonly requests: RequestCount;
  readonly operationEnded: (operation: EndedOperation) => void;
  /** From now on this part is asked too. */
  join(part: string, tell: Tell): void;
  /** All of it as text, in the format that an `Accept` header asks for. */
  print(accept: string): Promise<{ readonly type: string; readonly text: string }>;
  stop(): void;
}

/** Begins to count. `now` counts milliseconds; `info` are words about the program that stay the same. */
export function openMetrics(
  { store, weigher }: { readonly store: Store; readonly weigher: Weigher },
  info: Readonly<Record<string, string>>,
  operationNames: readonly string[],
  now: () => number,
): Metrics {
  const calls = countStoreCalls(store, now);
  const weighings = countWeighings(weigher, now);
  const requests = countRequests(now);
  const operations = countOperations(operationNames);
  const watched = watchProcess(now);
  const parts: Record<string, Tell> = {
    build: () => [
      {
        kind: "gauge",
        name: "scribeline_build_info",
        help: "Always 1; its labels say what runs.",
        samples: [{ labels: info, value: 1 }],
      },
    ],
    requests: requests.tell,
    operations: operations.tell,
    // Asked past the counting: a look at the numbers is none of the work.
    store: tellStore(store),
    calls: calls.tell,
    weigher: weighings.tell,
    process: watched.tell,
  };
  return {
    store: calls.store,
    weigher: weighings.weigher,
    requests,
    operationEnded: operations.ended,
    join: (part, tell) => {
      parts[part] = tell;
    },
    print: async (accept) => {
      const format = /application\/openmetrics-text/i.test(accept) ? "openmetrics" : "plain";
      return { type: MEDIA_TYPES[format], text: printMetrics(await collectMetrics(parts), format) };
    },
    stop: watched.stop,
  };
}
