import type { RevisionNumber } from "../../../domain/revision.ts";
import { followGraph, type Made } from "../../../ports/follow-graph.ts";
import type { Store } from "../../../ports/store.ts";
import { type DisagreementSurvey, surveyDisagreements } from "./disagreement-survey.ts";
import { type RegionSurvey, surveyRegions } from "./region-survey.ts";

/**
 * What is made of a whole graph and kept in memory: made in slices when it is first asked for, then following every change,
 * whoever made it. An answer says of which revision it is.
 */
export interface Surveys {
  /** Of the newest revision, or as the regions stood at another. */
  regions(at?: RevisionNumber): Promise<Made<RegionSurvey>>;
  disagreements(): Promise<Made<DisagreementSurvey>>;
  /** How far the making of what disagrees has come, in percent. */
  disagreementsMade(): number;
}

/** Old revisions of which a survey is kept. */
const MOST_KEPT = 2;

/** Surveys of a store. They outlive requests, so the store must be one without a deadline. */
export function openSurveys(store: Store): Surveys {
  const regions = followGraph(store, {
    begin: (at) => surveyRegions(store, at),
    follow: (survey, change, at) => survey.follow(change, at),
  });
  let made = 0;
  const disagreements = followGraph(store, {
    begin: (at) =>
      surveyDisagreements(store, at, {
        onProgress: (share) => {
          made = share;
        },
      }),
    follow: (survey, change, at) => survey.follow(change, at),
  });
  const old = new Map<RevisionNumber, Promise<Made<RegionSurvey>>>();

  const regionsAt = (at: RevisionNumber): Promise<Made<RegionSurvey>> => {
    const known = old.get(at);
    if (known) return known;
    const making = surveyRegions(store, at).then((what) => ({ what, at }));
    old.set(at, making);
    for (const revision of [...old.keys()].slice(0, -MOST_KEPT)) old.delete(revision);
    // What failed is made again for the next who asks.
    making.catch(() => old.delete(at));
    return making;
  };
  return {
    regions: async (at) => {
      const newest = (await store.newestRevision())?.number ?? 0;
      return at === undefined || at === newest ? regions() : regionsAt(at);
    },
    disagreements,
    disagreementsMade: () => Math.floor(100 * made),
  };
}
