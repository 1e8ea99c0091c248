import type { RevisionNumber } from "../../../domain/revision.ts";
import { followGraph, type Made, type Maker } from "../../../ports/follow-graph.ts";
import type { Store } from "../../../ports/store.ts";
import { type DisagreementSurvey, surveyDisagreements } from "./disagreement-survey.ts";
import { type RegionSurvey, surveyRegions } from "./region-survey.ts";
import type { SurveyOptions } from "./survey-options.ts";

/**
 * What is made of a whole graph and kept in memory: made in slices when it is first asked for, then following every change,
 * whoever made it. An answer says of which revision it is. Who asks through `surveyedSoon` does not wait until it is made.
 */
export interface Surveys {
  /** Of the newest revision, or as the regions stood at another. */
  regions(at?: RevisionNumber): Promise<Made<RegionSurvey>>;
  disagreements(): Promise<Made<DisagreementSurvey>>;
  /** How far the making of such regions has come, in percent. */
  regionsMade(at?: RevisionNumber): number;
  /** How far the making of what disagrees has come, in percent. */
  disagreementsMade(): number;
}

/** Old revisions of which a survey is kept. */
const MOST_KEPT = 2;

/** Surveys of a store. They outlive requests, so the store must be one without a deadline. */
export function openSurveys(store: Store): Surveys {
  const regions = followed(
    store,
    (at, options) => surveyRegions(store, at, options),
    (survey, change, at) => survey.follow(change, at),
  );
  const disagreements = followed(
    store,
    (at, options) => surveyDisagreements(store, at, options),
    (survey, change, at) => survey.follow(change, at),
  );
  const old = new Map<RevisionNumber, Making<Made<RegionSurvey>>>();

  const regionsAt = (at: RevisionNumber): Promise<Made<RegionSurvey>> => {
    const known = old.get(at);
    if (known) return known.made;
    const making = makingOf((options) => surveyRegions(store, at, options).then((what) => ({ what, at })));
    old.set(at, making);
    for (const revision of [...old.keys()].slice(0, -MOST_KEPT)) old.delete(revision);
    // What failed is made again for the next who asks.
    making.made.catch(() => old.delete(at));
    return making.made;
  };
  return {
    regions: async (at) => {
      const newest = (await store.newestRevision())?.number ?? 0;
      return at === undefined || at === newest ? regions.ask() : regionsAt(at);
    },
    disagreements: disagreements.ask,
    regionsMade: (at) => (at === undefined ? undefined : old.get(at))?.percent() ?? regions.percent(),
    disagreementsMade: disagreements.percent,
  };
}

/** Something that is being made, and how far that is. */
interface Making<What> {
  readonly made: Promise<What>;
  readonly percent: () => number;
}

const inPercent = (share: number): number => Math.floor(100 * share);

function makingOf<What>(make: (options: SurveyOptions) => Promise<What>): Making<What> {
  let share = 0;
  const onProgress = (now: number): void => {
    share = now;
  };
  return { made: make({ onProgress }), percent: () => inPercent(share) };
}

/** A survey that is made when it is first asked for, then follows every change. */
function followed<What>(
  store: Store,
  begin: (at: RevisionNumber, options: SurveyOptions) => Promise<What>,
  follow: Maker<What>["follow"],
): { readonly ask: () => Promise<Made<What>>; readonly percent: () => number } {
  let making: Making<What> | undefined;
  const ask = followGraph(store, {
    begin: (at) => {
      making = makingOf((options) => begin(at, options));
      return making.made;
    },
    follow,
  });
  return { ask, percent: () => making?.percent() ?? 0 };
}
