import type { Piece } from "../examination.ts";
import type { Neighbourhood } from "../neighbourhood.ts";
import type { Assumptions, Report } from "../report.ts";
import type { Term } from "../term.ts";
import type { Stage } from "./weighing.ts";

/** Everything that a weighing needs, as plain data. */
export interface WeighingJob {
  readonly piece: Piece;
  /** What `askFor` asks for. */
  readonly neighbourhood: Neighbourhood;
  readonly assumptions: Assumptions;
  readonly report: Pick<Report, "findings">;
  readonly stages: readonly Stage[];
  /** For what to look at next: features that could be looked for, and a neighbourhood that knows them as well. */
  readonly lookFor?: { readonly features: readonly Term[]; readonly neighbourhood: Neighbourhood };
}
