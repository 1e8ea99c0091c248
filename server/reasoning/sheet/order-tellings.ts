import { STRENGTHS } from "../../domain/claim.ts";
import { compareText, firstDifference } from "../../domain/compare.ts";
import type { TermId } from "../../domain/ids.ts";
import { type Broader, isWithin } from "../../domain/region.ts";
import { TELLS, type Telling } from "./telling.ts";

type Weights = Omit<Telling, "part" | "position" | "possible" | "usual" | "claims" | "isAssumed">;

const SIGHTS: readonly Telling["sight"][] = ["now", "later", "sample"];

/**
 * Order of what is most telling (F4): bounds, signs, habits, what is typical, records; within each, what can be looked for at once, what is said of the very form, what is typical of the very place, what would contradict the date, signs of change before those of age, what is more than
 * tentative, what divides the years most evenly, the stronger, what is looked for on the fewest kinds of part; then by id.
 */
export const compareTellings = (a: Weights, b: Weights): number =>
  firstDifference(
    TELLS.indexOf(a.tells) - TELLS.indexOf(b.tells),
    SIGHTS.indexOf(a.sight) - SIGHTS.indexOf(b.sight),
    Number(b.isOfForm) - Number(a.isOfForm),
    Number(b.isOfPlace) - Number(a.isOfPlace),
    Number(b.isAgainstDate) - Number(a.isAgainstDate),
    Number(b.isOfChange) - Number(a.isOfChange),
    Number(a.strength === "tentative") - Number(b.strength === "tentative"),
    b.evenness - a.evenness,
    STRENGTHS.indexOf(a.strength) - STRENGTHS.indexOf(b.strength),
    a.kinds - b.kinds,
    compareText(a.feature, b.feature),
  );

/** Of one part, what is typical of the very place is told beyond `most`, up to as many. */
const MOST_OF_PLACE = 4;
/** A bound or habit that divides fewer of the years in question only fills its own share. */
const LEAST_TELLING = 40;

/**
 * The first `most` of one part (F4): a bound, a sign, a habit and what is typical in turn, so that none crowds out the others; where there is
 * no more of one, only what tells much stands in for it. Records come where nothing else is left. What is typical of
 * the very place comes beyond them, since it was asked for. Of a feature and a
 * narrower one only the more telling is taken. In the order of `compareTellings`.
 */
export function chooseTellings<One extends Weights>(
  tellings: readonly One[],
  most: number,
  broader: Broader,
): readonly One[] {
  const sorted = [...tellings].sort(compareTellings);
  const chosen: One[] = [];
  const isKin = (a: TermId, b: TermId): boolean => isWithin(a, b, broader) || isWithin(b, a, broader);
  const next = (isWanted: (one: One) => boolean, room = most): boolean => {
    const found = sorted.find(
      (one) => isWanted(one) && !chosen.some(({ feature }) => isKin(feature, one.feature)),
    );
    if (found === undefined || chosen.length >= room) return false;
    chosen.push(found);
    return true;
  };
  const share = Math.ceil(most / 3);
  for (let round = 0; round < share; round++)
    for (const kind of ["bound", "sign", "habit", "typical"]) next(({ tells }) => tells === kind);
  while (
    next(({ tells, evenness }) => tells === "sign" || (tells !== "record" && evenness >= LEAST_TELLING))
  );
  if (chosen.length === 0) while (chosen.length < share && next(() => true));
  const room = chosen.length + MOST_OF_PLACE;
  while (next(({ isOfPlace }) => isOfPlace, room));
  return chosen.sort(compareTellings);
}
