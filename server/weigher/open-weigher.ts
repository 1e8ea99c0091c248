import { Worker } from "node:worker_threads";
import type { WeighingJob } from "../domain/weighing/job.ts";
import type { Weighing } from "../domain/weighing/weighing.ts";
import type { Log } from "../ports/log.ts";
import type { Weigher } from "../ports/weigher.ts";
import { unweighed, type Weighed, withStage } from "../reasoning/weigh.ts";

interface Sent {
  readonly ticket: number;
  readonly weighed?: Weighed;
}

interface Waiting {
  readonly job: WeighingJob;
  readonly stop: AbortSignal | undefined;
  readonly settle: (weighing: Weighing) => void;
  /** Takes it out of the queue, unweighed. */
  readonly leave: () => void;
}

export interface WeigherOptions {
  readonly log: Log;
  /** Worker threads. */
  readonly count?: number;
  /** Milliseconds that a job may take. */
  readonly longest?: number;
}

const LONGEST = 20_000;
/** Kind and place of a defect; its message may hold what was asked for. */
const whereOf = (failure: unknown): string =>
  failure instanceof Error
    ? (failure.stack ?? failure.name).replace(failure.message, "").trim()
    : typeof failure;
/** Jobs that may wait; more are answered as stopped at once. */
const MOST_WAITING = 64;

/**
 * Opens a weigher of worker threads. A worker that is stopped, dies, or takes too long is replaced by a fresh one, and its job is
 * answered with the stages that were through. What it died of is logged, and that it took too long.
 */
export function openWeigher({ log, count = 2, longest = LONGEST }: WeigherOptions): Weigher {
  const idle: Worker[] = [];
  const running = new Set<Worker>();
  const queue: Waiting[] = [];
  let tickets = 0;
  let closed = false;
  const start = (): Worker => {
    const worker = new Worker(new URL("./weigh-in-worker.ts", import.meta.url));
    worker.unref();
    // One that dies while it waits is not given another job; whoever runs a job on it hears of it by itself.
    worker.on("error", () => undefined);
    worker.once("exit", () => {
      const at = idle.indexOf(worker);
      if (at >= 0) idle.splice(at, 1);
    });
    return worker;
  };

  function next(): void {
    const waiting = queue.shift();
    if (waiting === undefined) return;
    const worker = idle.pop() ?? (running.size < count ? start() : undefined);
    if (worker === undefined) return void queue.unshift(waiting);
    running.add(worker);
    run(worker, waiting);
  }

  function run(worker: Worker, { job, stop, settle, leave }: Waiting): void {
    stop?.removeEventListener("abort", leave);
    const ticket = ++tickets;
    let weighing = unweighed(job);
    const end = (keep: boolean): void => {
      clearTimeout(timer);
      stop?.removeEventListener("abort", kill);
      // One by one: all at once would take away the worker's own as well, and it would never be heard of again.
      worker.off("message", take).off("error", fail).off("exit", kill);
      running.delete(worker);
      if (keep && !closed) idle.push(worker);
      else void worker.terminate();
      settle(weighing);
      next();
    };
    const kill = (): void => end(false);
    const fail = (failure: unknown): void => {
      log({ level: "error", event: "weighing failed", error: whereOf(failure) });
      kill();
    };
    const timer = setTimeout(() => {
      log({ level: "warn", event: "weighing took too long", milliseconds: longest });
      kill();
    }, longest);
    stop?.addEventListener("abort", kill, { once: true });
    const take = (sent: Sent): void => {
      if (sent.ticket !== ticket) return;
      if (sent.weighed) weighing = withStage(weighing, sent.weighed);
      else end(true);
    };
    worker.on("message", take);
    worker.once("error", fail);
    worker.once("exit", kill);
    worker.postMessage({ ticket, job });
  }

  return {
    weigh: (job, stop) =>
      new Promise((settle) => {
        if (closed || stop?.aborted || queue.length >= MOST_WAITING) return settle(unweighed(job));
        const leave = (): void => {
          queue.splice(queue.indexOf(waiting), 1);
          settle(unweighed(job));
        };
        const waiting: Waiting = { job, stop, settle, leave };
        stop?.addEventListener("abort", leave, { once: true });
        queue.push(waiting);
        next();
      }),
    close: async () => {
      closed = true;
      for (const { job, settle } of queue.splice(0)) settle(unweighed(job));
      await Promise.all([...idle.splice(0), ...running].map((worker) => worker.terminate()));
    },
  };
}
