import { parentPort } from "node:worker_threads";
import type { WeighingJob } from "../domain/weighing/job.ts";
import { weighStages } from "../reasoning/weigh.ts";

/** Runs in a worker thread: takes jobs, sends each stage when it is through, and `undefined` at the end. */
parentPort?.on("message", ({ ticket, job }: { readonly ticket: number; readonly job: WeighingJob }) => {
  for (const weighed of weighStages(job)) parentPort?.postMessage({ ticket, weighed });
  parentPort?.postMessage({ ticket });
});
