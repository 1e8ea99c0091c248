import type { Tell } from "../ports/metrics.ts";
import { oneGauge } from "../ports/one-number.ts";
import type { Weigher } from "../ports/weigher.ts";
import { openCounter } from "./open-counter.ts";
import { openHistogram } from "./open-histogram.ts";

/** The same weigher, and its jobs: how many there are, were, and how long they took, the time in the queue included. */
export function countWeighings(
  weigher: Weigher,
  now: () => number,
): { readonly weigher: Weigher; readonly tell: Tell } {
  const ended = openCounter({
    name: "scribeline_weighings",
    help: "Pieces weighed: through, or stopped before (nobody waited, time was up, or the queue was full).",
  });
  const seconds = openHistogram({
    name: "scribeline_weighing_seconds",
    help: "How long a piece took to be weighed, its wait for a thread included.",
    unit: "seconds",
  });
  let jobs = 0;
  return {
    weigher: {
      weigh: async (job, stop) => {
        const since = now();
        jobs++;
        try {
          const weighing = await weigher.weigh(job, stop);
          ended.add({
            outcome: weighing.missing.some(({ why }) => why === "stopped") ? "stopped" : "through",
          });
          return weighing;
        } finally {
          jobs--;
          seconds.take((now() - since) / 1000);
        }
      },
      close: () => weigher.close(),
    },
    tell: () => [
      ended.tell(),
      seconds.tell(),
      oneGauge(
        { name: "scribeline_weigher_jobs", help: "Pieces being weighed or waiting for a thread." },
        jobs,
      ),
    ],
  };
}
