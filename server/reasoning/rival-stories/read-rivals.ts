import { compareText, firstDifference } from "../../domain/compare.ts";
import type { ObservationId, PartId } from "../../domain/ids.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { Rival, Rivals } from "../../domain/weighing/rivals.ts";
import { finiteWeight, significant } from "../../domain/weighing/significant.ts";
import type { Span } from "../../domain/years.ts";
import type { Subject } from "../check.ts";
import type { Model } from "../dates/model.ts";
import { placingOf } from "../dates/placing.ts";
import { type Posterior, statesOf, weighModel } from "../dates/posterior.ts";
import { modelReader } from "../dates/read-model.ts";
import { seesAlike, withPriors } from "../dates/with-priors.ts";
import { type Workings, workingsFor } from "../dates/workings.ts";
import { subjectIn } from "../subject-in.ts";
import { leaveOut } from "../weights/leave-out.ts";
import { unitsOf } from "../weights/units-of.ts";
import { type Story, storiesOf } from "./stories.ts";
import { regionsSuggested, typicalWeight } from "./typical.ts";

const MOST_REGIONS = 3;
/** Things seen that are named for each rival. */
const TOLD = 5;
/** What tells two stories apart by less is not named. */
const LEAST_TOLD = 0.05;

/** A story held against what was seen. */
interface Held {
  readonly story: Story;
  readonly model: Model;
  /** log10 of what the evidence loses without some of it. */
  readonly loss: (observations: readonly ObservationId[]) => number;
  /** log10 of the probability of what was seen. */
  readonly evidence: number;
  readonly parts: readonly PartId[];
}

/**
 * Holds the rival stories of a piece against each other: each with its own years and odds, Bayes factors against the story as claimed,
 * and what was seen that tells them apart. O(stories x things seen x years).
 */
export function readRivals(
  subject: Subject,
  odds: AssumedOdds,
  workings: Workings = workingsFor(subject, odds),
  model: Model = modelReader(subject, odds, placingOf(subject, odds, workings))(),
): Rivals {
  const { claimed, piece } = subject;
  const regions = regionsSuggested(subject, odds, MOST_REGIONS);
  const held = storiesOf(claimed, piece.examined, regions, odds).map((story) =>
    holdStory(story, subject, workings, seesAlike(story.odds, odds) ? model : undefined),
  );
  const base = held.find(({ story }) => story.kind === "as-claimed");
  const best = Math.max(...held.map(({ evidence }) => evidence));
  const total = held.reduce((sum, { story, evidence }) => sum + story.prior * 10 ** (evidence - best), 0);
  const weighed = held
    .map((one): Rival => {
      const { story, evidence, parts } = one;
      return {
        ...{ kind: story.kind, ...(story.region ? { region: story.region } : {}) },
        ...{ years: [[...story.years]] as [number, number][], prior: significant(story.prior) },
        evidence: finiteWeight(evidence),
        posterior: significant((story.prior * 10 ** (evidence - best)) / total),
        against: base ? finiteWeight(evidence - base.evidence) : null,
        parts,
        told: base && base !== one ? tellApart(one, base) : [],
        wouldTell: [],
      };
    })
    .sort((a, b) =>
      firstDifference(
        b.posterior - a.posterior,
        compareText(a.kind, b.kind),
        compareText(a.region ?? "", b.region ?? ""),
      ),
    );
  const [first, second] = weighed;
  return {
    weighed,
    discriminates:
      first === undefined || second === undefined || Math.log10(first.posterior / second.posterior) >= 0.5,
    ...(odds.madeToDeceive === undefined ? {} : { madeToDeceive: odds.madeToDeceive }),
  };
}

/** `alike`: the model of the piece as it is, where the story says the same of what was seen. */
function holdStory(story: Story, subject: Subject, workings: Workings, alike: Model | undefined): Held {
  const { region = subject.piece.attribution.region } = story;
  const there = story.region === undefined ? subject : subjectIn(story.region, subject);
  const read =
    alike && there === subject
      ? withPriors(alike, subject, story.odds)
      : modelReader(there, story.odds, placingOf(there, story.odds, workings))();
  const model: Model = { ...read, prior: uniformWithin(read, story.years) };
  const posterior = weighModel(model, workings.mixer);
  const typical = typicalWeight(there, region, story.odds);
  const groups = model.cases[0]?.groups ?? [];
  return {
    ...{ story, model, loss: lossWithout(posterior, subject.claimed, typical, workings) },
    evidence: posterior.logEvidence / Math.LN10 + sumOf(typical.values()),
    parts: groups.flatMap(({ parts }, i) => {
      const { later, reused } = statesOf(posterior, i);
      return later + reused > 0.5 ? parts : [];
    }),
  };
}

function uniformWithin({ from, prior }: Model, [first, last]: Story["years"]): Float64Array {
  const inside = (t: number): boolean => from + t >= first && from + t <= last;
  const count = prior.reduce((sum, _, t) => (inside(t) ? sum + 1 : sum), 0);
  return prior.map((_, t) => (inside(t) ? 1 / count : 0));
}

/** What was seen, by how far it tells a story from the one as claimed: what its Bayes factor loses without it. */
function tellApart(story: Held, base: Held): Rival["told"] {
  return unitsOf(story.model)
    .flatMap(({ observations }) => {
      const log10 = story.loss(observations) - base.loss(observations);
      const [observation] = observations;
      return observation === undefined || Math.abs(log10) < LEAST_TOLD
        ? []
        : [{ observation, log10: significant(log10) }];
    })
    .sort((a, b) =>
      firstDifference(Math.abs(b.log10) - Math.abs(a.log10), compareText(a.observation, b.observation)),
    )
    .slice(0, TOLD);
}

/** log10 of what the probability of everything seen is divided by without some of it, each worked out once. */
function lossWithout(
  posterior: Posterior,
  claimed: Span,
  typical: ReadonlyMap<string, number>,
  workings: Workings,
) {
  const leave = leaveOut(posterior, claimed, workings);
  const known = new Map<string, number>();
  return (observations: readonly ObservationId[]): number => {
    const key = observations.join(" ");
    const before = known.get(key);
    if (before !== undefined) return before;
    const left = leave(observations);
    const byRegion = sumOf(observations.map((id) => typical.get(id) ?? 0));
    const loss = byRegion - Math.log10(left.claimed + left.others);
    known.set(key, loss);
    return loss;
  };
}

const sumOf = (values: Iterable<number>): number => {
  let sum = 0;
  for (const value of values) sum += value;
  return sum;
};
