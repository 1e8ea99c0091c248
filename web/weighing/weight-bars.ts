import type { ObservationId } from "#server/domain/ids.ts";
import type { WeighingWords } from "#server/domain/weighing/weighing-words.ts";
import type { Weights } from "#server/domain/weighing/weights.ts";

/** One step of the sum: from where the one before left off to where it leads. */
export interface WeightBar {
  readonly observations: readonly ObservationId[];
  readonly seen: string;
  /** What it weighs taken alone: "strongly against". */
  readonly brief: string;
  readonly alone: number | null;
  /** log10; null where it is beyond the model. */
  readonly step: number | null;
  readonly from: number;
  readonly to: number;
  readonly linkedBy?: string;
}

export interface WeightBars {
  readonly told: readonly WeightBar[];
  /** Steps that say next to nothing, in the order of the sum, after those told; with what they come to together. */
  readonly slight: readonly WeightBar[];
  readonly total: number | null;
  /** What the bars span, 0 within. */
  readonly least: number;
  readonly greatest: number;
}

/** Under this in either direction nothing is said, by itself or as a step. */
const NEXT_TO_NOTHING = 0.05;

const LINKED: Readonly<Record<NonNullable<Weights["steps"][number]["linkedBy"]>, string>> = {
  tool: "traces of one tool, told as one",
  source: "known from one source, told as one",
  cause: "of one cause, told as one",
  restoration: "parts that share one fate, told as one",
};

/**
 * The weights as a sum: those that say something in their order, then the rest; each begins where the one before ends, so that they add
 * up to the total. A step beyond the model has no length.
 */
export function weightBars(weights: Weights, words: NonNullable<WeighingWords["weights"]>): WeightBars {
  const steps = weights.steps.map((step, at) => ({ ...step, said: words[at] }));
  const tells = ({ leaveOneOut, chain }: (typeof steps)[number]): boolean =>
    leaveOneOut === null ||
    chain === null ||
    Math.abs(leaveOneOut) >= NEXT_TO_NOTHING ||
    Math.abs(chain) >= NEXT_TO_NOTHING;
  let at = 0;
  const bar = ({ observations, leaveOneOut, chain, linkedBy, said }: (typeof steps)[number]): WeightBar => {
    const from = at;
    at += chain ?? 0;
    return {
      observations,
      seen: said?.seen ?? "",
      brief: said?.brief ?? "",
      ...{ alone: leaveOneOut, step: chain, from, to: at },
      ...(linkedBy === undefined || observations.length < 2 ? {} : { linkedBy: LINKED[linkedBy] }),
    };
  };
  const told = steps.filter(tells).map(bar);
  const slight = steps.filter((step) => !tells(step)).map(bar);
  const ends = [...told, ...slight].map(({ to }) => to);
  const { total } = weights;
  return {
    ...{ told, slight, total },
    least: Math.min(0, total ?? 0, ...ends),
    greatest: Math.max(0, total ?? 0, ...ends),
  };
}
