import type { Dates, PartDates } from "../../domain/weighing/dates.ts";
import type { StateOdds } from "../../domain/weighing/odds.ts";
import { finiteWeight, significant } from "../../domain/weighing/significant.ts";
import type { Span, Year } from "../../domain/years.ts";
import { yearOdds } from "./credible-years.ts";
import { logOdds } from "./log-odds.ts";
import { madeIn } from "./made.ts";
import type { Model } from "./model.ts";
import { type KnownMixtures, type Posterior, statesOf, weighModel } from "./posterior.ts";
import { shareWithin } from "./share-within.ts";
import { workedIn } from "./worked.ts";

/** What a weighed model says, as the report has it. */
export function readDates(posterior: Posterior, claimed: Span, mixtures: KnownMixtures): Dates {
  const { model, years } = posterior;
  const ifClaimed = asClaimed(model, claimed, mixtures);
  const groups = model.cases[0]?.groups ?? [];
  return {
    whole: yearOdds(years, model.from),
    claimed: claimedOdds(posterior, claimed),
    evidence: significant(posterior.logEvidence / Math.LN10),
    parts: groups.map(({ parts, prior }, i): PartDates => {
      const worked = workedIn(posterior, i);
      return {
        parts,
        prior: rounded(prior),
        odds: rounded(statesOf(posterior, i)),
        made: yearOdds(madeIn(posterior, i), model.from),
        ...(worked ? { worked: yearOdds(worked, model.from) } : {}),
        ifAsClaimed: rounded(ifClaimed ? statesOf(ifClaimed, i) : prior),
      };
    }),
    places: [...Map.groupBy(posterior.cases, ({ given }) => given.place)].map(([place, cases]) => ({
      place,
      probability: significant(cases.reduce((sum, { probability }) => sum + probability, 0)),
    })),
    assumedShapes: model.assumedShapes,
    tried: model.tried,
    takenApart: model.takenApart,
  };
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
function asClaimed(model: Model, claimed: Span, mixtures: KnownMixtures): Posterior | undefined {
  const prior = model.prior.map((value, t) => (isWithin(model.from + t, claimed) ? value : 0));
  const total = prior.reduce((sum, value) => sum + value, 0);
  return total === 0
    ? undefined
    : weighModel({ ...model, prior: prior.map((value) => value / total) }, mixtures);
}

const rounded = ({ original, later, reused, reworked }: StateOdds): StateOdds => ({
  original: significant(original),
  later: significant(later),
  reused: significant(reused),
  reworked: significant(reworked),
});
