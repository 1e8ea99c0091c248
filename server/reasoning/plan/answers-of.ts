import { PART_STATES, type PartState } from "../../domain/part-state.ts";
import type { PlanAnswer, PlanItem } from "../../domain/weighing/looks.ts";
import { finiteWeight } from "../../domain/weighing/significant.ts";
import { meet, type Span, yearsFromJson } from "../../domain/years.ts";
import type { Foresight } from "../looks/foresee.ts";
import type { Looked } from "../looks/foreseer.ts";
import type { Weighed } from "../sheet/weigh-feature.ts";

/** Change in log10 of odds under which an answer says nothing of the claim, and of a state. */
const LEAST_OF_CLAIM = 0.1;
const LEAST_OF_STATE = 0.15;

/** What each answer would do. Seen, it rules the claim out if its possible years miss it by claims alone, without the fall-back. */
export function answersOf(
  { before, withSeen }: Looked,
  said: Pick<Weighed, "possible" | "isAssumed"> | undefined,
  claimed: Span,
): Pick<PlanItem, "ifSeen" | "ifAbsent"> {
  const isRuledOut =
    said !== undefined && !said.isAssumed && meet(yearsFromJson(said.possible), [claimed]).length === 0;
  const seen = answerFrom(before, withSeen);
  return {
    ifSeen: isRuledOut ? { ...seen, claim: "rules out" } : seen,
    ifAbsent: answerFrom(before, without(before, withSeen)),
  };
}

function answerFrom(before: Foresight, after: Foresight): PlanAnswer {
  const log10 = finiteWeight(oddsOfClaim(after) - oddsOfClaim(before));
  const state = statePointedAt(before, after);
  return {
    claim:
      log10 === null || Math.abs(log10) < LEAST_OF_CLAIM ? "says nothing" : log10 > 0 ? "for" : "against",
    log10,
    ...(state === undefined ? {} : { state }),
  };
}

const oddsOfClaim = ({ seen, claimed }: Foresight): number =>
  Math.log10(claimed) - Math.log10(seen - claimed);

const oddsOfState = ({ seen, byState }: Foresight, state: PartState): number =>
  Math.log10(byState[state]) - Math.log10(seen - byState[state]);

/** The state that gains most by the answer. */
function statePointedAt(before: Foresight, after: Foresight): PartState | undefined {
  const gains = PART_STATES.map((state) => ({
    state,
    log10: oddsOfState(after, state) - oddsOfState(before, state),
  }));
  const [most] = gains.sort((a, b) => b.log10 - a.log10);
  return most !== undefined && most.log10 >= LEAST_OF_STATE ? most.state : undefined;
}

/** The joint probabilities with "it is not there". */
const without = (before: Foresight, withSeen: Foresight): Foresight => ({
  seen: before.seen - withSeen.seen,
  claimed: before.claimed - withSeen.claimed,
  byState: {
    original: before.byState.original - withSeen.byState.original,
    later: before.byState.later - withSeen.byState.later,
    reused: before.byState.reused - withSeen.byState.reused,
    reworked: before.byState.reworked - withSeen.byState.reworked,
  },
});
