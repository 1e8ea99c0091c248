import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import type { StateOdds } from "#server/domain/weighing/odds.ts";
import { randomSource } from "#server/generator/random-source.ts";
import { credibleYears } from "#server/reasoning/dates/credible-years.ts";
import type { Factor, Group, Model } from "#server/reasoning/dates/model.ts";
import { statesOf, weighModel } from "#server/reasoning/dates/posterior.ts";
import { meanAfter } from "#server/reasoning/dates/shape.ts";

/**
 * Simulation-based calibration (Talts, Betancourt, Simpson, Vehtari & Gelman, "Validating Bayesian Inference Algorithms with
 * Simulation-Based Calibration", 2018): pieces drawn from the model, then weighed by it. The year's rank must be uniform, and a part
 * said to be original with probability p must be so in p of the cases. The two controls show that the test can see a fault.
 */
const YEARS = 350;
const PARTS = 6;
const FEATURES = 7;
const PRIOR: StateOdds = { original: 0.7, later: 0.2, reused: 0.06, reworked: 0.04 };
const LATER_WORK = 0.3;
const REUSE_YEARS = 40;
const DETECT = 0.8;
const MISREAD = 0.05;

type Way = "right" | "absences-dropped" | "traces-apart";

interface Outcome {
  /** Rank of the true year, spread evenly within its step. */
  readonly rank: number;
  readonly isCovered: boolean;
  readonly parts: readonly { readonly said: number; readonly isOriginal: boolean }[];
}

function simulate(seed: number, way: Way, traces: number): Outcome {
  const source = randomSource(seed);
  const random = (): number => source.below(2 ** 30) / 2 ** 30;
  const year = Math.floor(random() * YEARS);
  const groups: Group[] = [];
  const truths: boolean[] = [];
  for (let p = 0; p < PARTS; p++) {
    const state = pick(PRIOR, random);
    truths.push(state === "original");
    const made = madeIn(state, year, random);
    const factors: Factor[] = [];
    const workYear = (): number =>
      state === "reworked" && random() < LATER_WORK && year < YEARS - 1
        ? year + 1 + Math.floor(random() * (YEARS - 1 - year))
        : made;
    for (let f = 0; f < FEATURES; f++) {
      const curve = habit(random);
      const seen = random() < reported(curve[workYear()] as number);
      if (!seen && way === "absences-dropped") continue;
      factors.push(
        factor(`${p}.${f}`, (t) => (seen ? reported(curve[t] as number) : 1 - reported(curve[t] as number))),
      );
    }
    const tool = toolFactors(p, workYear(), traces, way, random);
    groups.push({
      ...{ parts: [id<"part">(`p${p}`)], prior: PRIOR, signs: [] },
      factors: [...factors, ...tool],
    });
  }
  const model: Model = {
    ...{ from: 0, to: YEARS - 1, laterWork: LATER_WORK, reuseYears: REUSE_YEARS },
    prior: new Float64Array(YEARS).fill(1 / YEARS),
    cases: [{ place: { region: null, elsewhere: false }, weight: 1, given: new Map(), groups }],
    ...{ assumedShapes: [], tried: [], takenApart: [], used: [] },
  };
  const posterior = weighModel(model);
  const before = posterior.years.subarray(0, year).reduce((sum, p) => sum + p, 0);
  const { years } = credibleYears(posterior.years, 0);
  return {
    rank: before + random() * (posterior.years[year] as number),
    isCovered: years.some(([a, b]) => year >= Number(a) && year <= Number(b)),
    parts: truths.map((isOriginal, p) => ({ said: statesOf(posterior, p).original, isOriginal })),
  };
}

const reported = (common: number): number => DETECT * ((1 - MISREAD) * common + MISREAD * 0.05);

/** A habit that comes, stays and goes at years drawn at random. */
function habit(random: () => number): Float64Array {
  const begin = random() * YEARS - 60;
  const full = begin + 5 + random() * 50;
  const end = full + 20 + random() * 150;
  return Float64Array.from({ length: YEARS }, (_, t) => {
    const up = Math.min(1, Math.max(0, (t - begin) / (full - begin)));
    const down = 1 - Math.min(1, Math.max(0, (t - end) / 40));
    return 0.01 + 0.98 * up * down;
  });
}

/** Traces of one tool: all come of whether it was used. Taken apart, each is weighed as if it stood alone. */
function toolFactors(part: number, made: number, traces: number, way: Way, random: () => number): Factor[] {
  const begin = 50 + random() * 250;
  const use = (t: number): number => (t >= begin ? 0.9 : 0.05);
  const isUsed = random() < use(made);
  const shows = Array.from({ length: traces }, () => random() < (isUsed ? 0.9 : 0.05));
  const single = (is: boolean, used: number): number => {
    const p = used * 0.9 + (1 - used) * 0.05;
    return is ? p : 1 - p;
  };
  if (way === "traces-apart") return shows.map((is, i) => factor(`${part}.t${i}`, (t) => single(is, use(t))));
  const all = (p: number): number => shows.reduce((product, is) => product * (is ? p : 1 - p), 1);
  return [factor(`${part}.tool`, (t) => use(t) * all(0.9) + (1 - use(t)) * all(0.05))];
}

const factor = (name: string, at: (t: number) => number): Factor => ({
  observations: [id<"observation">(name)],
  byYear: Float64Array.from({ length: YEARS }, (_, t) => at(t)),
});

function pick(odds: StateOdds, random: () => number): keyof StateOdds {
  let left = random();
  for (const state of ["original", "later", "reused"] as const) {
    left -= odds[state];
    if (left < 0) return state;
  }
  return "reworked";
}

function madeIn(state: keyof StateOdds, year: number, random: () => number): number {
  if (state === "later")
    return year === YEARS - 1 ? year : year + 1 + Math.floor(random() * (YEARS - 1 - year));
  if (state !== "reused" || year === 0) return year;
  const q = Math.exp(-1 / REUSE_YEARS);
  for (;;) {
    const age = 1 + Math.floor(Math.log(1 - random()) / Math.log(q));
    if (age <= year) return year - age;
  }
}

interface Calibration {
  /** Probability of ranks so uneven, by the Kolmogorov-Smirnov test. */
  readonly evenness: number;
  readonly coverage: number;
  /** How many standard deviations the number of original parts lies from what was said. */
  readonly z: number;
}

function calibrate(draws: number, way: Way, traces = 2): Calibration {
  const outcomes = Array.from({ length: draws }, (_, seed) => simulate(seed + 1, way, traces));
  const ranks = outcomes.map(({ rank }) => rank).sort((a, b) => a - b);
  const distance = Math.max(...ranks.map((rank, i) => Math.max((i + 1) / draws - rank, rank - i / draws)));
  const parts = outcomes.flatMap((outcome) => outcome.parts);
  const surplus = parts.reduce((sum, { said, isOriginal }) => sum + Number(isOriginal) - said, 0);
  const variance = parts.reduce((sum, { said }) => sum + said * (1 - said), 0);
  return {
    evenness: kolmogorov(distance * (Math.sqrt(draws) + 0.12 + 0.11 / Math.sqrt(draws))),
    coverage: outcomes.filter(({ isCovered }) => isCovered).length / draws,
    z: surplus / Math.sqrt(variance),
  };
}

/** Upper tail of the Kolmogorov distribution (Stephens 1970 for the correction of its argument). */
function kolmogorov(x: number): number {
  let sum = 0;
  for (let k = 1; k <= 100; k++) sum += (k % 2 === 1 ? 2 : -2) * Math.exp(-2 * k * k * x * x);
  return Math.min(1, Math.max(0, sum));
}

describe("[B1] [B4] [B5] calibration by simulation", () => {
  it("is right for pieces drawn from the model", () => {
    const { evenness, coverage, z } = calibrate(500, "right");
    expect(evenness).toBeGreaterThan(0.001);
    expect(Math.abs(z)).toBeLessThan(3.5);
    expect(coverage).toBeGreaterThanOrEqual(0.92);
  });

  it("is seen to fail if what was looked for and is absent is thrown away", () => {
    const { evenness } = calibrate(2000, "absences-dropped");
    expect(evenness).toBeLessThan(0.001);
  });

  it("is seen to fail if six traces of one tool are taken for six witnesses", () => {
    const { evenness, z } = calibrate(2000, "traces-apart", 6);
    expect(evenness < 0.001 || Math.abs(z) > 3.5).toBe(true);
  });

  it("means over later years as the simulation does", () => {
    expect([...meanAfter(Float64Array.from([1, 2, 3, 6]))]).toEqual([11 / 3, 4.5, 6, 6]);
  });
});
