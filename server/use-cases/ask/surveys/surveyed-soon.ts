import type { Made } from "../../../ports/follow-graph.ts";
import { inTime, TOO_LATE } from "../../../ports/in-time.ts";

/** Milliseconds in which a survey comes, or is said to be being made: more than until an old one is given. */
const SOON = 3_000;

/** What is made of a whole graph, or nothing where that takes longer than somebody should wait for it. */
export async function surveyedSoon<What>(survey: Promise<Made<What>>): Promise<Made<What> | undefined> {
  const made = await inTime(survey, SOON);
  return made === TOO_LATE ? undefined : made;
}

/** How far a survey is made, in percent: 100 only where it also comes soon, and is not behind by a long change. */
export async function percentMade<What>(percent: number, survey: () => Promise<Made<What>>): Promise<number> {
  if (percent < 100) return percent;
  return (await surveyedSoon(survey())) === undefined ? 99 : 100;
}
