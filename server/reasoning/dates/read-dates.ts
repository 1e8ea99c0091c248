import type { Dates, PartDates } from "../../domain/weighing/dates.ts";
import { finiteWeight, significant } from "../../domain/weighing/significant.ts";
import type { Span, Year } from "../../domain/years.ts";
import { yearOdds } from "./credible-years.ts";
import { logOdds } from "./log-odds.ts";
import { madeIn } from "./made.ts";
import type { Mixer } from "./mixture.ts";
import type { Model } from "./model.ts";
import { partOddsIn, roundedStates } from "./part-odds.ts";
import { type Posterior, statesOf, weighModel, weightOf } from "./posterior.ts";
import { shareWithin } from "./share-within.ts";
import { workedIn } from "./worked.ts";

/** What a weighed model says, as the report has it. */
export function readDates(posterior: Posterior, claimed: Span, mixer: Mixer): Dates {
  const { model, years } = posterior;
  const ifClaimed = asClaimed(model, claimed, mixer);
  return {
    whole: yearOdds(years, model.from),
    claimed: claimedOdds(posterior, claimed),
    evidence: significant(posterior.logEvidence / Math.LN10),
    parts: partOddsIn(posterior).map((part, i): PartDates => {
      const worked = workedIn(posterior, i);
      return {
        ...part,
        made: yearOdds(madeIn(posterior, i), model.from),
        ...(worked ? { worked: yearOdds(worked, model.from) } : {}),
        ifAsClaimed: ifClaimed ? roundedStates(statesOf(ifClaimed, i)) : part.prior,
      };
    }),
    places: placesOf(posterior),
    assumedShapes: model.assumedShapes,
    tried: model.tried,
    takenApart: model.takenApart,
  };
}

function placesOf({ model, cases }: Posterior): Dates["places"] {
  const odds = new Map(model.cases.map(({ place }) => [place, 0]));
  for (const { alike, probability } of cases)
    for (const { place, weight } of alike)
      odds.set(place, (odds.get(place) as number) + (probability * weight) / weightOf(alike));
  return [...odds].map(([place, probability]) => ({ place, probability: significant(probability) }));
}

/** Probability of the claimed years before and after, with log10 of the Bayes factor for them. */
export function claimedOdds({ model, years }: Posterior, claimed: Span): Dates["claimed"] {
  return {
    prior: significant(shareWithin(model.prior, model.from, claimed)),
    posterior: significant(shareWithin(years, model.from, claimed)),
    log10: finiteWeight(logOdds(years, model.from, claimed) - logOdds(model.prior, model.from, claimed)),
  };
}

const isWithin = (year: Year, [first, last]: Span): boolean => year >= first && year <= last;

/** The model with the year of making within the claimed ones; undefined if the grid has none of them. */
function asClaimed(model: Model, claimed: Span, mixer: Mixer): Posterior | undefined {
  const prior = model.prior.map((value, t) => (isWithin(model.from + t, claimed) ? value : 0));
  const total = prior.reduce((sum, value) => sum + value, 0);
  return total === 0
    ? undefined
    : weighModel({ ...model, prior: prior.map((value) => value / total) }, mixer);
}
