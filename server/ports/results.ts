import type { Piece } from "../domain/examination.ts";
import type { Neighbourhood } from "../domain/neighbourhood.ts";
import type { Report } from "../domain/report.ts";
import type { WeighingJob } from "../domain/weighing/job.ts";
import type { Weighing } from "../domain/weighing/weighing.ts";

/** Answers of the engine, kept by everything they follow from (K1, K2). The same bytes as worked out anew. */
export interface Results {
  readonly report: (piece: Piece, neighbourhood: Neighbourhood) => Report;
  /** Kept only where no stage was stopped; `weigh` is asked where it is not. */
  readonly weighing: (job: WeighingJob, weigh: () => Promise<Weighing>) => Promise<Weighing>;
}
