import { id } from "../../domain/ids.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { Span } from "../../domain/years.ts";
import { readSubject, type Subject } from "../check.ts";
import { uniformWithin } from "../dates/date-prior.ts";
import { placingOf } from "../dates/placing.ts";
import { weighModel } from "../dates/posterior.ts";
import { modelReader } from "../dates/read-model.ts";
import type { Steps } from "../in-one-go.ts";
import type { Candidate } from "./candidates.ts";
import { foreseer, type Looked } from "./foreseer.ts";

/** A candidate with what is foreseen of it. */
export interface WeighedLook {
  readonly candidate: Candidate;
  readonly looked: Looked;
}

/**
 * Foresees each candidate on its part, in their order; with the year of making within `years` if they are given. A step is a
 * candidate.
 */
export function* weighLooks(
  { piece, graph, assumptions }: Subject,
  wanted: readonly Candidate[],
  odds: AssumedOdds,
  years?: Span,
): Steps<readonly WeighedLook[]> {
  // One thing that could not be seen on each part: it says nothing, and has the part's place in the graph.
  const probes = [...new Map(wanted.map((one) => [one.part, one])).values()].map(({ part, feature }) => ({
    ...{ id: id<"observation">(`look.${part}`), part, feature },
    ...{ seen: "unseen" as const, sureness: "sure" as const },
  }));
  const observations = [...piece.observations, ...probes];
  const wide = readSubject({ ...piece, observations }, graph, assumptions);
  const placing = placingOf(wide, odds);
  const model = modelReader(wide, odds, placing)();
  const posterior = weighModel(years ? { ...model, prior: uniformWithin(model, years) } : model);
  const look = foreseer(wide, placing, posterior, odds);
  const checks = new Map(wide.checks.map((check) => [check.id, check]));
  const weighed: WeighedLook[] = [];
  for (const candidate of wanted) {
    const probe = checks.get(`look.${candidate.part}`);
    if (probe === undefined) continue;
    weighed.push({ candidate, looked: look({ ...probe, feature: candidate.feature }) });
    yield;
  }
  return weighed;
}
