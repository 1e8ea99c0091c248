import { type Indicates, STRENGTHS } from "../../domain/claim.ts";
import { compareText, firstDifference } from "../../domain/compare.ts";
import { applies } from "../../domain/scope.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { Check } from "../check.ts";
import type { KnownGraph } from "../known-graph.ts";
import type { SignFactor } from "./model.ts";

interface Spoken {
  readonly check: Check;
  readonly claim: Indicates;
  /** What counts once: a cause the claim names, else the observation. */
  readonly cause: string;
}

/**
 * What undated signs on a group of parts say of its state (docs/method.md). Those of one cause, and those of one observation, count
 * once: what was seen before what is absent, then the strongest, then by id. What an exception sets aside says nothing.
 */
export function signFactors(
  checks: readonly Check[],
  graph: KnownGraph,
  odds: AssumedOdds,
): readonly SignFactor[] {
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
  return causes.flatMap(([, alike]) => {
    const [first] = [...alike].sort(weightiest);
    if (first === undefined) return [];
    const observations = [...new Set(alike.flatMap(({ check }) => check.observation ?? []))].sort();
    return [
      {
        observations,
        ...(observations.length > 1 ? { linkedBy: "cause" as const } : {}),
        byState: {
          original: chance(first, "original", odds),
          later: chance(first, "later", odds),
          reused: chance(first, "reused", odds),
          reworked: chance(first, "reworked", odds),
        },
      },
    ];
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

function chance(
  { check, claim }: Spoken,
  state: Indicates["states"][number],
  { signs, misread, baseRate, detect }: AssumedOdds,
): number {
  const [spokenFor, otherwise] = signs[claim.strength];
  const m = misread[check.sureness];
  const reported = (1 - m) * (claim.states.includes(state) ? spokenFor : otherwise) + m * baseRate;
  return check.seen === "present" ? reported : 1 - detect * reported;
}
