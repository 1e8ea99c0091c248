import { compareText, firstDifference } from "../../domain/compare.ts";
import { finiteWeight } from "../../domain/weighing/significant.ts";
import type { Weights } from "../../domain/weighing/weights.ts";
import type { Span } from "../../domain/years.ts";
import { logOdds } from "../dates/log-odds.ts";
import type { Posterior } from "../dates/posterior.ts";
import type { Workings } from "../dates/workings.ts";
import { chainOf } from "./chain-of.ts";
import { leaveOut } from "./leave-out.ts";
import { unitsOf } from "./units-of.ts";
import { weightWord } from "./weight-word.ts";

/**
 * What each thing seen weighs for the claimed years: what is lost without it, all else given, and a chain that adds up to the whole,
 * the weightiest first. O(units x (years + cases)).
 */
export function readWeights(
  posterior: Posterior,
  claimed: Span,
  workings: Pick<Workings, "mixer" | "reduced">,
): Weights {
  const { model, years } = posterior;
  const whole = logOdds(years, model.from, claimed);
  const leave = leaveOut(posterior, claimed, workings);
  const units = unitsOf(model)
    .map((unit) => {
      const left = leave(unit.observations);
      return { unit, leaveOneOut: whole - Math.log10(left.claimed) + Math.log10(left.others) };
    })
    .sort((a, b) =>
      firstDifference(sizeOf(b.leaveOneOut) - sizeOf(a.leaveOneOut), compareText(a.unit.key, b.unit.key)),
    );
  const chain = chainOf(
    posterior,
    units.map(({ unit }) => unit),
    workings,
  );
  let reached = logOdds(model.prior, model.from, claimed);
  const steps = units.map(({ unit: { observations, linkedBy }, leaveOneOut }, i) => {
    const next = logOdds(chain[i] as Float64Array, model.from, claimed);
    const step = next - reached;
    reached = next;
    return {
      observations,
      ...(linkedBy ? { linkedBy } : {}),
      leaveOneOut: finiteWeight(leaveOneOut),
      chain: finiteWeight(step),
      word: weightWord(leaveOneOut),
    };
  });
  return { total: finiteWeight(whole - logOdds(model.prior, model.from, claimed)), steps };
}

/** As it is told, so that rounding decides no order. */
const sizeOf = (log10: number): number => Math.abs(finiteWeight(log10) ?? Number.MAX_VALUE);
