import { type Indicates, STRENGTHS } from "../../domain/claim.ts";
import { compareText, firstDifference } from "../../domain/compare.ts";
import { applies } from "../../domain/scope.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { Check } from "../check.ts";
import type { KnownGraph } from "../known-graph.ts";
import type { Grid } from "./curve.ts";
import type { Factor, SignFactor } from "./model.ts";

interface Spoken {
  readonly check: Check;
  readonly claim: Indicates;
  /** What counts once: a cause the claim names, else the observation. */
  readonly cause: string;
}

/** What signs on a group of parts say: of its state, or of its age. */
export interface SignsRead {
  readonly signs: readonly SignFactor[];
  /** Signs of age: any part shows them once it is old, whatever its state. */
  readonly aged: readonly Factor[];
}

/**
 * What undated signs on a group of parts say (docs/method.md). Those of one cause, and those of one observation, count once: what
 * was seen before what is absent, then the strongest, then by id. What an exception sets aside says nothing. A sign that original,
 * reused and reworked parts all show is one of age, and grows likely with the years since the part was made.
 */
export function signFactors(
  checks: readonly Check[],
  graph: KnownGraph,
  odds: AssumedOdds,
  grid: Grid,
): SignsRead {
  const spoken = checks.flatMap((check) =>
    check.seen === "unseen" || check.observation === undefined
      ? []
      : graph
          .claimsOf(check.feature)
          .filter((claim): claim is Indicates => claim.relation === "indicates")
          .filter((claim) => standsOn(check, claim, graph))
          .map((claim): Spoken => ({ check, claim, cause: claim.cause ?? `observation ${check.id}` })),
  );
  const causes = [...Map.groupBy(spoken, ({ cause }) => cause)].sort(([a], [b]) => compareText(a, b));
  const signs: SignFactor[] = [];
  const aged: Factor[] = [];
  for (const [, alike] of causes) {
    const first = [...alike].sort(weightiest)[0] as Spoken;
    const observations = [...new Set(alike.flatMap(({ check }) => check.observation ?? []))].sort();
    const told = { observations, ...(observations.length > 1 ? { linkedBy: "cause" as const } : {}) };
    if (isOfAge(first.claim)) aged.push({ ...told, byYear: byAge(first, odds, grid) });
    else signs.push({ ...told, byState: byState(first, odds) });
  }
  return { signs, aged };
}

const OLD: Indicates["states"] = ["original", "reused", "reworked"];
const isOfAge = ({ states }: Indicates): boolean =>
  OLD.every((state) => states.includes(state)) && !states.includes("later");

const byState = (spoken: Spoken, odds: AssumedOdds): SignFactor["byState"] => {
  const [spokenFor, otherwise] = odds.signs[spoken.claim.strength];
  const of = (state: Indicates["states"][number]): number =>
    reported(spoken.check, spoken.claim.states.includes(state) ? spokenFor : otherwise, odds);
  return {
    original: of("original"),
    later: of("later"),
    reused: of("reused"),
    reworked: of("reworked"),
  };
};

/** Grows evenly from a new part to one of `ageYears`, and no further. */
function byAge({ check, claim }: Spoken, odds: AssumedOdds, { from, to }: Grid): Float64Array {
  const [old, young] = odds.signs[claim.strength];
  return Float64Array.from({ length: to - from + 1 }, (_, t) => {
    const age = Math.min(1, (to - from - t) / odds.ageYears);
    return reported(check, young + (old - young) * age, odds);
  });
}

const standsOn = ({ views, exceptions, seen }: Check, claim: Indicates, graph: KnownGraph): boolean =>
  views.every(({ context }) => applies(claim.scope, context.where, graph.broader)) &&
  exceptions.defeatsOf(claim.id, seen).length === 0;

const weightiest = (a: Spoken, b: Spoken): number =>
  firstDifference(
    Number(a.check.seen === "absent") - Number(b.check.seen === "absent"),
    STRENGTHS.indexOf(a.claim.strength) - STRENGTHS.indexOf(b.claim.strength),
    compareText(a.check.id, b.check.id),
    compareText(a.claim.id, b.claim.id),
  );

/** P(what was recorded), if the sign is there with this probability. */
function reported(
  { seen, sureness }: Check,
  there: number,
  { misread, baseRate, detect }: AssumedOdds,
): number {
  const m = misread[sureness];
  const found = (1 - m) * there + m * baseRate;
  return seen === "present" ? found : 1 - detect * found;
}
