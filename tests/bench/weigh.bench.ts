import { ASSUMED } from "#server/domain/assumptions.ts";
import type { Piece } from "#server/domain/examination.ts";
import type { Neighbourhood } from "#server/domain/neighbourhood.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import { STAGES, type Stage } from "#server/domain/weighing/weighing.ts";
import type { Store } from "#server/ports/store.ts";
import { askFor } from "#server/reasoning/ask-for.ts";
import { readSubject } from "#server/reasoning/check.ts";
import type { Model } from "#server/reasoning/dates/model.ts";
import { weighModel } from "#server/reasoning/dates/posterior.ts";
import { modelReader } from "#server/reasoning/dates/read-model.ts";
import { examine } from "#server/reasoning/examine.ts";
import { knowGraph } from "#server/reasoning/known-graph.ts";
import { weigh } from "#server/reasoning/weigh.ts";
import { enumerateJoint } from "#tests/oracles/joint-by-enumeration.ts";
import { anyOfSeed, openSeed } from "#tests/support/seed-pieces.ts";
import { quantile, sayFigure } from "./figure.ts";
import { type Bench, medians } from "./measure.ts";

const PARTS = 10;
const OBSERVATIONS = 30;
const PIECES = 16;
const ROUNDS = 20;
const MOST_MS = 25;
const LARGE = { parts: 40, observations: 200, mostMs: 10 };
/** All that needs no other neighbourhood. */
const EVERYTHING = STAGES.filter((stage) => stage !== "looks");

interface Asked {
  readonly piece: Piece;
  readonly neighbourhood: Neighbourhood;
}

const askSeed = async (store: Store, piece: Piece): Promise<Asked> => ({
  piece,
  neighbourhood: await store.neighbourhood({ ...askFor(piece, ASSUMED), at: 1 }),
});

/** A report and all that is weighed of it, as the server works it out. */
function report({ piece, neighbourhood }: Asked, stages: readonly Stage[] = EVERYTHING): unknown {
  const { findings } = examine(piece, neighbourhood);
  return weigh({ piece, neighbourhood, assumptions: ASSUMED, report: { findings }, stages });
}

/** What one thing left out at a time would be, each time from the beginning. */
function weighEach({ piece, neighbourhood }: Asked): number {
  return piece.observations.reduce((sum, { id }) => {
    const observations = piece.observations.filter((made) => made.id !== id);
    const subject = readSubject({ ...piece, observations }, knowGraph(neighbourhood, ASSUMED), ASSUMED);
    return sum + weighModel(modelReader(subject, ASSUMED_ODDS)()).logEvidence;
  }, 0);
}

/** Milliseconds of computing of one report: what else the machine does meanwhile does not count. A mean, as clocks of this kind are coarse. */
function computing(one: Asked, stages: readonly Stage[]): number {
  const before = process.threadCpuUsage();
  for (let round = 0; round < ROUNDS; round++) report(one, stages);
  const { user, system } = process.threadCpuUsage(before);
  return (user + system) / 1000 / ROUNDS;
}

function sayTimes(asked: readonly Asked[]): void {
  for (const one of asked) computing(one, EVERYTHING);
  for (const stages of [[], ...EVERYTHING.map((stage) => [stage]), EVERYTHING]) {
    const times = asked.map((one) => computing(one, stages));
    const isAll = stages.length === EVERYTHING.length;
    const what = isAll ? "everything" : `the report${stages[0] ? ` and ${stages[0]}` : " alone"}`;
    sayFigure({ what: `${what}, computing, median`, value: quantile(times, 0.5), unit: "ms" });
    if (isAll)
      sayFigure({
        what: `${what}, 95 % of the pieces`,
        value: quantile(times, 0.95),
        unit: "ms",
        atMost: MOST_MS,
      });
  }
}

/** Reports of 30 observations on 10 parts of the seed graph with everything on, and the posterior of a large piece. */
export const bench: Bench = async () => {
  const { store, terms } = await openSeed();
  const asked: Asked[] = [];
  for (let seed = 1; seed <= PIECES; seed++)
    asked.push(await askSeed(store, anyOfSeed(seed, terms, PARTS, OBSERVATIONS)));
  sayTimes(asked);
  const large = await askSeed(store, anyOfSeed(99, terms, LARGE.parts, LARGE.observations));
  await store.close();
  const models = { usual: modelOf(asked[0] as Asked), large: modelOf(large) };
  console.log(`  the large piece: ${models.large.cases.length} cases of ${LARGE.parts} parts`);
  const weights = await medians(
    asked,
    { rounds: 3, warmUp: 1 },
    { weights: (one) => report(one, ["weights"]), each: weighEach },
  );
  const { parts, observations, mostMs } = LARGE;
  const ofLarge = await medians(
    [models.large],
    { rounds: 9, warmUp: 3 },
    { weighed: (one) => weighModel(one) },
  );
  sayFigure({
    what: `the posterior of ${parts} parts with ${observations} things seen`,
    ...{ value: ofLarge.weighed, unit: "ms", atMost: mostMs },
  });
  const ofUsual = await medians(
    [models.usual],
    { rounds: 3, warmUp: 1 },
    { weighed: (one) => weighModel(one), enumerated: enumerateJoint },
  );
  return [
    {
      what: `what each of ${OBSERVATIONS} things seen weighs, with the report`,
      against: "the piece read and weighed anew without each of them",
      ...{ cost: weights.weights, costAgainst: weights.each, atMost: 0.5 },
    },
    {
      what: `the posterior of ${PARTS} parts with ${OBSERVATIONS} things seen`,
      against: "all years, states and cases written out one by one",
      ...{ cost: ofUsual.weighed, costAgainst: ofUsual.enumerated, atMost: 0.01 },
    },
  ];
};

function modelOf({ piece, neighbourhood }: Asked): Model {
  return modelReader(readSubject(piece, knowGraph(neighbourhood, ASSUMED), ASSUMED), ASSUMED_ODDS)();
}
