import { id } from "#server/domain/ids.ts";
import type { StateOdds } from "#server/domain/weighing/odds.ts";
import type { Factor, Group, Model } from "#server/reasoning/dates/model.ts";

export const FROM = 1700;
export const TO = 1899;
/** The claimed years of E1. */
export const CLAIMED = [1765, 1775] as const;

const PLACE = { region: null, elsewhere: false } as const;

export const uniform = (from: number, to: number): Float64Array =>
  new Float64Array(to - from + 1).fill(1 / (to - from + 1));

/** A factor of one observation: one probability within some years, another outside. */
export function factor(
  name: string,
  years: readonly [number, number],
  inside: number,
  outside: number,
  [from, to]: readonly [number, number] = [FROM, TO],
): Factor {
  return {
    observations: [id<"observation">(name)],
    byYear: Float64Array.from({ length: to - from + 1 }, (_, i) =>
      from + i >= years[0] && from + i <= years[1] ? inside : outside,
    ),
  };
}

export const states = (original: number, later: number, reused: number, reworked = 0): StateOdds => ({
  ...{ original, later, reused, reworked },
});

export const group = (name: string, prior: StateOdds, factors: readonly Factor[]): Group => ({
  ...{ parts: [id<"part">(name)], prior, factors, signs: [] },
});

/** A model of cases that differ in weight and groups. */
export const modelOf = (
  cases: readonly (readonly [number, readonly Group[]])[],
  prior: Float64Array = uniform(FROM, TO),
  from: number = FROM,
): Model => ({
  ...{ from, to: from + prior.length - 1, prior, laterWork: 0.3, reuseYears: 40 },
  cases: cases.map(([weight, groups]) => ({ place: PLACE, weight, given: new Map(), groups })),
  ...{ assumedShapes: [], tried: [], takenApart: [], used: [] },
});

/** E1: carcase, drawers and brasses of a chest, each with the trace of a tool or a pattern. */
export const e1 = (drawers: StateOdds = states(0.8, 0.17, 0.03)): Model =>
  modelOf([
    [
      1,
      [
        group("carcase", states(0.95, 0.03, 0.02), [factor("pit", [1700, 1800], 0.9, 0.05)]),
        group("drawers", drawers, [
          factor("arc", [1815, 1899], 0.9, 0.02),
          factor("dovetail", [1700, 1830], 0.9, 0.2),
        ]),
        group("brasses", states(0.6, 0.37, 0.03), [factor("oval", [1780, 1800], 0.9, 0.03)]),
      ],
    ],
  ]);

/** One tool, in use in .98 of the shops from 1800 on and in .02 before, that leaves a trace in .9; else there is one in .05. */
export function oneTool(traces: number): Model {
  const byYear = Float64Array.from({ length: TO - FROM + 1 }, (_, t) => {
    const used = FROM + t >= 1800 ? 0.98 : 0.02;
    return used * 0.9 ** traces + (1 - used) * 0.05 ** traces;
  });
  const observations = Array.from({ length: traces }, (_, i) => id<"observation">(`trace${i}`));
  return modelOf([[1, [group("back", states(1, 0, 0), [{ observations, linkedBy: "tool", byYear }])]]]);
}

/** Three features that one source dates from 1800 on; it is right with .9, and if not they say nothing. */
export function oneSource(isShared: boolean): Model {
  const names = ["a", "b", "c"];
  const right = (name: string): Group => group(name, states(1, 0, 0), [factor(name, [1800, TO], 1, 0.01)]);
  const wrong = (name: string): Group => group(name, states(1, 0, 0), [factor(name, [1800, TO], 0.5, 0.5)]);
  const apart = (name: string): Group =>
    group(name, states(1, 0, 0), [factor(name, [1800, TO], 0.9 * 1 + 0.1 * 0.5, 0.9 * 0.01 + 0.1 * 0.5)]);
  return isShared
    ? modelOf([
        [0.9, names.map(right)],
        [0.1, names.map(wrong)],
      ])
    : modelOf([[1, names.map(apart)]]);
}

/** Two places with habits of their own and a part in four states; forty years. */
export function twoPlaces(): Model {
  const grid = [1700, 1739] as const;
  const at = (saw: readonly [number, number], joint: readonly [number, number]): readonly Group[] => [
    group("side", states(0.855, 0.095, 0.0, 0.05), [factor("joint", joint, 0.8, 0.1, grid)]),
    group("back", states(0.6, 0.25, 0.1, 0.05), [
      factor("saw", saw, 0.7, 0.02, grid),
      factor("nail", [1715, 1739], 0.6, 0.05, grid),
    ]),
  ];
  return modelOf(
    [
      [0.3, at([1725, 1739], [1700, 1720])],
      [0.7, at([1710, 1739], [1705, 1712])],
    ],
    uniform(...grid),
  );
}
