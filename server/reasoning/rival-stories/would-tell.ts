import { compareText, firstDifference } from "../../domain/compare.ts";
import type { Look } from "../../domain/weighing/looks.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { Rival, Rivals } from "../../domain/weighing/rivals.ts";
import { significant } from "../../domain/weighing/significant.ts";
import type { Subject } from "../check.ts";
import { inOneGo } from "../in-one-go.ts";
import { entropy } from "../looks/information.ts";
import { weighLooks } from "../looks/weigh-looks.ts";
import { subjectIn } from "../subject-in.ts";
import { type Story, storiesOf } from "./stories.ts";

/** Looks named for each story. */
const NAMED = 3;
/** Bits under which a look tells two stories apart too little to be named. */
const LEAST_BITS = 0.01;

/**
 * The rivals with what would tell each from the story as claimed if it were looked for: the bits that a look is expected to give on
 * which of the two holds, were they alike before. Asked of the looks that the piece as it stands suggests; the subject is of a graph
 * that knows them. O(stories x looks x years).
 */
export function withWouldTell(
  rivals: Rivals,
  subject: Subject,
  looks: readonly Look[],
  odds: AssumedOdds,
): Rivals {
  const regions = rivals.weighed.flatMap(({ region }) => region ?? []);
  const stories = storiesOf(subject.claimed, subject.piece.examined, regions, odds);
  const seenUnder = ({ region, years, odds: own }: Story): readonly number[] =>
    inOneGo(weighLooks(region === undefined ? subject : subjectIn(region, subject), looks, own, years)).map(
      ({ looked }) => looked.withSeen.seen,
    );
  const claimed = stories.find(({ kind }) => kind === "as-claimed");
  if (claimed === undefined || looks.length === 0) return rivals;
  const before = seenUnder(claimed);
  return {
    ...rivals,
    weighed: rivals.weighed.map((rival) => {
      const story = stories.find(({ kind, region }) => kind === rival.kind && region === rival.region);
      if (story === undefined || story === claimed) return rival;
      return { ...rival, wouldTell: tellApart(before, seenUnder(story), looks, odds) };
    }),
  };
}

function tellApart(
  before: readonly number[],
  after: readonly number[],
  looks: readonly Look[],
  odds: AssumedOdds,
): Rival["wouldTell"] {
  const both = (p: number): number => entropy([p, 1 - p]);
  return looks
    .flatMap(({ part, feature, move }, i) => {
      const [p, q] = [before[i] ?? 0, after[i] ?? 0];
      const bits = odds.access[move] * (both((p + q) / 2) - (both(p) + both(q)) / 2);
      return bits < LEAST_BITS ? [] : [{ part, feature, bits: significant(bits) }];
    })
    .sort((a, b) =>
      firstDifference(b.bits - a.bits, compareText(a.part, b.part), compareText(a.feature, b.feature)),
    )
    .slice(0, NAMED);
}
