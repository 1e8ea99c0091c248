import type { StateOdds } from "../../domain/weighing/odds.ts";
import type { Group, Model } from "./model.ts";
import { numbering } from "./numbering.ts";
import { type Shape, shapeOf } from "./shape.ts";

/** One group of parts over the years, by its states. By year of the first making. */
export interface States extends Shape {
  /** P(seen | reused): the mean of `seen` over the years before each, the nearest weighing most. */
  readonly before: Float64Array;
  /** What the priors and signs multiply each state by: original by `seen`, later by `after`, reused by `before`, reworked by `worked`. */
  readonly odds: StateOdds;
}

/** The states mixed. */
export interface Mixture extends States {
  /** P(seen on the group | first making in year t), divided by the scale. */
  readonly all: Float64Array;
}

type Grid = Pick<Model, "from" | "to" | "laterWork" | "reuseYears">;

/** Reads and mixes groups of models that have one grid and one `laterWork`. O(factors x years) for each; what is known is kept. */
export interface Mixer {
  readonly states: (group: Group, model: Grid) => States;
  readonly mix: (group: Group, model: Grid) => Mixture;
}

/** Shapes that are kept; with more, all are let go, so that the largest pieces need no more memory than others. */
const MOST_KEPT = 1000;

/** A mixer that knows nothing yet. Groups whose factors say the same share one shape. */
export function mixer(): Mixer {
  const numberOf = numbering<Float64Array>();
  const flat = new Map<Float64Array, boolean>();
  const isFlat = (byYear: Float64Array): boolean => {
    const found = flat.get(byYear) ?? byYear.every((value) => value === byYear[0]);
    flat.set(byYear, found);
    return found;
  };
  const shapes = new Map<string, Shape>();
  const before = new Map<Shape, Map<number, Float64Array>>();
  const mixtures = new Map<Group, { readonly reuseYears: number; readonly mixture: Mixture }>();

  function states(group: Group, { from, to, laterWork, reuseYears }: Grid): States {
    if (shapes.size >= MOST_KEPT) for (const kept of [shapes, before, mixtures]) kept.clear();
    const telling = group.factors.filter(({ byYear }) => !isFlat(byYear));
    const key = telling.map(({ byYear }) => numberOf(byYear)).join(" ");
    const shape = shapes.get(key) ?? shapeOf(telling, to - from + 1, laterWork);
    shapes.set(key, shape);
    const means = before.get(shape) ?? new Map<number, Float64Array>();
    before.set(shape, means);
    const mean = means.get(reuseYears) ?? meanBefore(shape.seen, Math.exp(-1 / reuseYears));
    means.set(reuseYears, mean);
    // What is as probable in all years changes the scale alone.
    const logScale = group.factors
      .filter((factor) => !telling.includes(factor))
      .reduce((sum, { byYear }) => sum + Math.log(byYear[0] as number), shape.logScale);
    return { ...shape, logScale, before: mean, odds: oddsOf(group) };
  }

  function mix(group: Group, model: Grid): Mixture {
    const known = mixtures.get(group);
    if (known?.reuseYears === model.reuseYears) return known.mixture;
    const found = states(group, model);
    const all = new Float64Array(found.seen.length);
    for (let t = 0; t < all.length; t++) all[t] = mixedIn(found, t);
    const mixture = { ...found, all };
    mixtures.set(group, { reuseYears: model.reuseYears, mixture });
    return mixture;
  }

  return { states, mix };
}

/**
 * The four states of a group in one year of the first making: original, of that year; later, of any year after it alike; reused, older
 * by a geometric age; reworked, of that year with each dating feature of later work by chance. At the ends of the grid the part is of
 * that year itself.
 */
export const mixedIn = ({ seen, after, before, worked, odds }: States, t: number): number =>
  odds.original * (seen[t] as number) +
  odds.later * (after[t] as number) +
  odds.reused * (before[t] as number) +
  odds.reworked * (worked[t] as number);

/** Priors of the states, each times the probability of the signs in it. */
function oddsOf({ prior, signs }: Group): StateOdds {
  const times = (state: keyof StateOdds): number =>
    signs.reduce((product, { byState }) => product * byState[state], prior[state]);
  return {
    original: times("original"),
    later: times("later"),
    reused: times("reused"),
    reworked: times("reworked"),
  };
}

/** Mean over the years before each, the nearest weighing most (ratio `q` a year), cut off at the first; there, the value itself. */
export function meanBefore(values: Float64Array, q: number): Float64Array {
  const means = new Float64Array(values.length);
  means[0] = values[0] as number;
  let sum = 0;
  let power = 1;
  for (let t = 1; t < values.length; t++) {
    sum = (1 - q) * (values[t - 1] as number) + q * sum;
    power *= q;
    means[t] = sum / (1 - power);
  }
  return means;
}
