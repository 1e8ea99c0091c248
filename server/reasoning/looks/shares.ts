import type { TermId } from "../../domain/ids.ts";
import type { Check, Subject } from "../check.ts";
import type { Currency } from "../dates/currency.ts";
import type { Mixture } from "../dates/mixture.ts";
import type { Placing } from "../dates/placing.ts";
import { casesApart, type Posterior } from "../dates/posterior.ts";
import type { Given } from "../dates/right-odds.ts";
import { type Outlook, outlookOf } from "./outlook.ts";

/** Cases in which a group is one mixture, seen from one view, and what one more thing on it meets there. */
export interface Share {
  readonly currency: (term: TermId) => Currency;
  readonly given: Given;
  readonly outlook: Outlook;
}

/** The shares of one group from the views of one part: all cases that look alike as one, and apart by what is taken as right. */
export interface Shares {
  readonly together: readonly Share[];
  readonly apart: readonly Share[];
}

/** Adds the cases of a posterior up to shares. O(cases x years). */
export function sharesOf(
  posterior: Posterior,
  group: number,
  check: Check,
  { places, claimed }: Pick<Subject, "places" | "claimed">,
  placing: Placing,
): Shares {
  const { model, years } = posterior;
  const together = new Map<string, Gathered>();
  const apart = new Map<string, Gathered>();
  const mixtures = new Map<Mixture, number>();
  const placeNumber = new Map(places.map((place, i) => [place, i]));
  for (const { given, mixtures: all, years: joint } of casesApart(posterior)) {
    const mixture = all[group] as Mixture;
    if (!mixtures.has(mixture)) mixtures.set(mixture, mixtures.size);
    const { view, currency } = placing.placedAt(check, placeNumber.get(given.place) ?? 0);
    const key = `${mixtures.get(mixture)} ${view.context.key}`;
    const taken = [...given.given].map(([claim, is]) => `${claim}=${is}`).join(" ");
    const made = () => ({ mixture, currency, given: given.given, byYear: new Float64Array(years.length) });
    gather(together, key, made, joint);
    gather(apart, `${key} ${taken}`, made, joint);
  }
  const shareOf = ({ mixture, byYear, ...rest }: Gathered): Share => ({
    ...rest,
    outlook: outlookOf(mixture, byYear, model, claimed),
  });
  return { together: [...together.values()].map(shareOf), apart: [...apart.values()].map(shareOf) };
}

interface Gathered extends Omit<Share, "outlook"> {
  readonly mixture: Mixture;
  /** Joint probability of the cases and the year over P(seen on the group | year). */
  readonly byYear: Float64Array;
}

function gather(into: Map<string, Gathered>, key: string, make: () => Gathered, joint: Float64Array): void {
  const gathered = into.get(key) ?? make();
  into.set(key, gathered);
  const { byYear, mixture } = gathered;
  for (let t = 0; t < joint.length; t++) {
    const seen = mixture.all[t] as number;
    if (seen > 0) byYear[t] = (byYear[t] as number) + (joint[t] as number) / seen;
  }
}

/** The shares to use for a feature: apart if a claim behind its curve is tried both right and wrong. */
export const sharesFor = ({ together, apart }: Shares, feature: TermId): readonly Share[] =>
  apart.some(
    ({ currency, given }) =>
      given.size > 0 && [...currency(feature).claims].some((claim) => given.has(claim)),
  )
    ? apart
    : together;
