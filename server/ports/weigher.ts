import type { WeighingJob } from "../domain/weighing/job.ts";
import type { Weighing } from "../domain/weighing/weighing.ts";

/** Weighs pieces somewhere; long work must not hold up others. */
export interface Weigher {
  /** The weighing. When `stop` says so, or time is up, with the stages that were through by then. */
  readonly weigh: (job: WeighingJob, stop?: AbortSignal) => Promise<Weighing>;
  readonly close: () => Promise<void>;
}
