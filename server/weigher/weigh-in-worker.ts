import { parentPort } from "node:worker_threads";
import type { WeighingJob } from "../domain/weighing/job.ts";
import { weighStages } from "../reasoning/weigh.ts";
import { areProved, proveWeighedMends } from "./prove-weighed-mends.ts";

interface Asked {
  readonly ticket: number;
  readonly job: WeighingJob;
}

/**
 * Runs in a worker thread: takes jobs, sends each stage when it is through, and `undefined` at the end. Mends that are not proved go to
 * the solver last, so that nothing else waits for it.
 */
async function answer({ ticket, job }: Asked): Promise<void> {
  let unproved: Parameters<typeof proveWeighedMends>[1] | undefined;
  for (const weighed of weighStages(job)) {
    parentPort?.postMessage({ ticket, weighed });
    if (weighed.stage === "mends" && !areProved(weighed.answer)) unproved = weighed.answer;
  }
  if (unproved) {
    const proved = await proveWeighedMends(job, unproved);
    parentPort?.postMessage({ ticket, weighed: { stage: "mends", answer: proved } });
  }
  parentPort?.postMessage({ ticket });
}

parentPort?.on("message", (asked: Asked) => {
  // What goes wrong ends the worker, and the one that started it sees that.
  answer(asked).catch((error: unknown) => {
    setImmediate(() => {
      throw error;
    });
  });
});
