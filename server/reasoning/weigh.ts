import { oddsFor } from "../domain/weighing/chosen-odds.ts";
import type { WeighingJob } from "../domain/weighing/job.ts";
import type { AssumedOdds } from "../domain/weighing/odds.ts";
import { STAGES, type Stage, type Weighing } from "../domain/weighing/weighing.ts";
import { readSubject, type Subject } from "./check.ts";
import { placingOf } from "./dates/placing.ts";
import { type Posterior, weighModel } from "./dates/posterior.ts";
import { readDates } from "./dates/read-dates.ts";
import { type ModelReader, modelReader } from "./dates/read-model.ts";
import { type Workings, workingsFor } from "./dates/workings.ts";
import { ENGINE } from "./engine.ts";
import { knowGraph } from "./known-graph.ts";
import { readLooks } from "./looks/read-looks.ts";
import { readMends } from "./mends/read-mends.ts";
import { readOrigins } from "./origins/read-origins.ts";
import { readRivals } from "./rival-stories/read-rivals.ts";
import { readSensitivity } from "./sensitivity/read-sensitivity.ts";
import { readWeights } from "./weights/read-weights.ts";

/** The answer of one stage. */
export type Weighed = {
  readonly [S in Stage]: { readonly stage: S; readonly answer: NonNullable<Weighing[S]> };
}[Stage];

/** A weighing before any stage is through. */
export const unweighed = ({ piece, neighbourhood, stages }: WeighingJob): Weighing => ({
  format: "scribeline/weighing",
  version: 1,
  engine: ENGINE,
  revision: neighbourhood.revision,
  odds: oddsFor(piece.odds),
  missing: stages.map((stage) => ({ stage, why: "stopped" })),
});

/** A weighing with one more stage through. */
export const withStage = (weighing: Weighing, { stage, answer }: Weighed): Weighing => ({
  ...weighing,
  [stage]: answer,
  missing: weighing.missing.filter((left) => left.stage !== stage),
});

/** What the stages share; each is worked out when the first stage asks for it. */
interface Desk {
  readonly job: WeighingJob;
  readonly odds: AssumedOdds;
  readonly subject: Subject;
  readonly workings: Workings;
  readonly read: ModelReader;
  readonly posterior: () => Posterior;
}

type Work = { readonly [S in Stage]?: (desk: Desk) => Weighing[S] };

/** How each stage is worked out. */
const WORK: Work = {
  mends: ({ subject, odds }) => readMends(subject, odds),
  origins: ({ subject }) => readOrigins(subject),
  dates: ({ posterior, subject, workings }) => readDates(posterior(), subject.claimed, workings.mixer),
  weights: ({ posterior, subject, workings }) => readWeights(posterior(), subject.claimed, workings),
  sensitivity: ({ subject, odds, posterior, ...desk }) =>
    readSensitivity(subject, odds, { ...desk, posterior: posterior() }),
  rivals: ({ subject, odds, workings, posterior }) => readRivals(subject, odds, workings, posterior().model),
  looks: ({ job, odds }) => {
    if (job.lookFor === undefined) return undefined;
    const { features, neighbourhood } = job.lookFor;
    const wide = readSubject(job.piece, knowGraph(neighbourhood, job.assumptions), job.assumptions);
    return readLooks(wide, { features, report: job.report }, odds);
  },
};

/**
 * Weighs a piece stage by stage, in the order of `STAGES`, so that whoever runs it can stop between two. The piece is valid. The same
 * answers for the same job.
 */
export function* weighStages(job: WeighingJob): Generator<Weighed> {
  const { piece, neighbourhood, assumptions } = job;
  const subject = readSubject(piece, knowGraph(neighbourhood, assumptions), assumptions);
  const odds = oddsFor(piece.odds);
  const workings = workingsFor(subject, odds);
  const read = modelReader(subject, odds, placingOf(subject, odds, workings));
  let weighed: Posterior | undefined;
  const posterior = (): Posterior => {
    weighed ??= weighModel(read(), workings.mixer);
    return weighed;
  };
  const desk: Desk = { job, odds, subject, workings, read, posterior };
  for (const stage of STAGES) {
    if (!job.stages.includes(stage)) continue;
    const answer = WORK[stage]?.(desk);
    if (answer !== undefined) yield { stage, answer } as Weighed;
  }
}

/** Weighs a piece to the end. */
export const weigh = (job: WeighingJob): Weighing => [...weighStages(job)].reduce(withStage, unweighed(job));
