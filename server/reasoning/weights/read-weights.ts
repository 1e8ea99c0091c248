import { compareText, firstDifference } from "../../domain/compare.ts";
import type { ObservationId } from "../../domain/ids.ts";
import { finiteWeight, significant } from "../../domain/weighing/significant.ts";
import type { Weights } from "../../domain/weighing/weights.ts";
import type { Span } from "../../domain/years.ts";
import { logOdds } from "../dates/log-odds.ts";
import type { Group, Model } from "../dates/model.ts";
import { type KnownMixtures, weighModel } from "../dates/posterior.ts";
import { keepOnly, unitsOf } from "./units-of.ts";
import { weightWord } from "./weight-word.ts";

/**
 * What each thing seen weighs for the claimed years: what is lost without it, all else given, and a chain that adds up to the whole,
 * the weightiest first. O(units x (years + cases)).
 */
export function readWeights(model: Model, claimed: Span, mixtures: KnownMixtures): Weights {
  const reduced = new Map<Group, Map<string, Group>>();
  const before = logOdds(model.prior, model.from, claimed);
  const weigh = (isKept: (id: ObservationId) => boolean): number =>
    logOdds(weighModel(keepOnly(model, isKept, reduced), mixtures).years, model.from, claimed) - before;
  const total = weigh(() => true);
  const units = unitsOf(model)
    .map((unit) => ({ unit, leaveOneOut: total - weigh((id) => !unit.observations.includes(id)) }))
    .sort((a, b) =>
      firstDifference(
        Math.abs(significant(b.leaveOneOut)) - Math.abs(significant(a.leaveOneOut)),
        compareText(a.unit.key, b.unit.key),
      ),
    );
  const counted = new Set<ObservationId>();
  let reached = 0;
  const steps = units.map(({ unit: { observations, linkedBy }, leaveOneOut }) => {
    for (const id of observations) counted.add(id);
    const sum = weigh((id) => counted.has(id));
    const chain = sum - reached;
    reached = sum;
    return {
      observations,
      ...(linkedBy ? { linkedBy } : {}),
      leaveOneOut: finiteWeight(leaveOneOut),
      chain: finiteWeight(chain),
      word: weightWord(leaveOneOut),
    };
  });
  return { total: finiteWeight(total), steps };
}
