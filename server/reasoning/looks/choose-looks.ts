import { compareText, firstDifference } from "../../domain/compare.ts";
import type { Look } from "../../domain/weighing/looks.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { IsKin } from "./kin-in.ts";

/** Looks told in all unless asked for more, and on one part. */
const TOLD = 12;
const TOLD_ON_A_PART = 3;
/** Bits under which a look tells nothing. */
export const LEAST_BITS = 1e-4;
/** Of the bits of the best part, what another must have to be named beside it. */
const WORTH_NAMING = 0.5;
/** Parts named beside the best. */
const MOST_NAMED = 3;

export interface ChosenLooks {
  readonly next: readonly Look[];
  readonly alike: number;
  readonly less: number;
}

type Question = "bits" | "bitsOfState";

/**
 * The looks that a person can follow: exceptions first, by how much they would take away; then in turn what tells most of the claim
 * and what tells most of the state of a part, for the trouble it takes; then ids. One of each family (an exception always), a few
 * on each part. Where the same feature would tell on other parts too, they are named beside the first.
 */
export function chooseLooks(
  looks: readonly Look[],
  isKin: IsKin,
  effort: AssumedOdds["effort"],
  most = TOLD,
): ChosenLooks {
  const worth = (look: Look, question: Question): number => look[question] / effort[look.move];
  const sortedBy = (question: Question): readonly Look[] =>
    looks.toSorted((a, b) =>
      firstDifference(
        b.wouldVoid.length - a.wouldVoid.length,
        worth(b, question) - worth(a, question),
        compareText(a.part, b.part),
        compareText(a.feature, b.feature),
      ),
    );
  const orders = { bits: sortedBy("bits"), bitsOfState: sortedBy("bitsOfState") };
  const next = orders.bits
    .filter(({ wouldVoid }) => wouldVoid.length > 0)
    .slice(0, most)
    .map((look) => ({ ...look, alsoOn: alsoOn(look, "bits") }));

  const isFree = (look: Look): boolean =>
    look.wouldVoid.length === 0 &&
    !next.some(({ feature }) => isKin(feature, look.feature)) &&
    next.filter(({ part }) => part === look.part).length < TOLD_ON_A_PART;
  const take = (question: Question): boolean => {
    const found = orders[question].find((look) => look[question] >= LEAST_BITS && isFree(look));
    if (found === undefined || next.length >= most) return false;
    next.push({ ...found, alsoOn: alsoOn(found, question) });
    return true;
  };
  for (let more = true; more; ) more = [take("bits"), take("bitsOfState")].includes(true);

  const told = new Set(next.map(({ part, feature }) => `${part} ${feature}`));
  const left = looks.filter(({ part, feature }) => !told.has(`${part} ${feature}`));
  const less = left.filter(isFree).length;
  return { next, alike: left.length - less, less };

  function alsoOn({ part, feature, ...look }: Look, question: Question): Look["alsoOn"] {
    return orders[question]
      .filter((other) => other.feature === feature && other.part !== part)
      .filter((other) => other[question] > look[question] * WORTH_NAMING)
      .slice(0, MOST_NAMED)
      .map((other) => other.part);
  }
}
