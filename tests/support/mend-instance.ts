import { id } from "#server/domain/ids.ts";
import type { GivenUp } from "#server/domain/weighing/mends.ts";
import type { Years } from "#server/domain/years.ts";
import { type RandomSource, randomSource } from "#server/generator/random-source.ts";
import { held, heldClaims, holdingOf } from "#server/reasoning/atoms.ts";
import { MEND_BUDGET, type MendBudget } from "#server/reasoning/mends/budget.ts";
import type { Ground } from "#server/reasoning/mends/ground.ts";
import { Items } from "#server/reasoning/mends/items.ts";
import type { Prices } from "#server/reasoning/mends/prices.ts";
import { puzzleOf } from "#server/reasoning/mends/puzzle.ts";
import type { MendScene } from "#server/reasoning/mends/read-mends.ts";

/** Windows that do not change whatever is given up, with a price on everything. */
export interface MendInstance {
  readonly claimed: readonly [number, number];
  readonly examined: number;
  readonly parts: Readonly<Record<string, { readonly later: number; readonly reused: number }>>;
  readonly observations: Readonly<
    Record<string, { readonly part: string; readonly altered: number; readonly misread: number }>
  >;
  readonly windows: readonly {
    readonly observation: string;
    readonly years: Years;
    readonly claims: readonly string[];
  }[];
  readonly claims: Readonly<Record<string, number>>;
  readonly separate: readonly (readonly [string, string])[];
  readonly notSeparate: number;
}

/** An instance as the search takes it: nothing is brought back by giving claims up. */
export function groundOfInstance(instance: MendInstance): {
  readonly ground: Ground;
  readonly scene: MendScene;
} {
  const items = new Items();
  const parts = Object.keys(instance.parts).sort();
  const prices: Prices = {
    later: ([part]) => instance.parts[part as string]?.later,
    reused: ([part]) => instance.parts[part as string]?.reused,
    altered: (observation) => instance.observations[observation]?.altered,
    misread: (observation) => instance.observations[observation]?.misread,
    claim: (claim) => instance.claims[claim],
    assumption: undefined,
    separate: instance.notSeparate,
  };
  const puzzle = puzzleOf(
    {
      windows: instance.windows.map(({ observation, years, claims }) => ({
        part: id<"part">(instance.observations[observation]?.part ?? ""),
        years,
        held: holdingOf(
          held({ kind: "observation", observation: id<"observation">(observation) }),
          ...claims.map((claim) => heldClaims([id<"claim">(claim)])),
        ),
      })),
      groups: parts.map((part) => [id<"part">(part)]),
      separate: instance.separate.map(([a, b]) => [id<"part">(a), id<"part">(b)] as const),
      claimed: instance.claimed,
      examined: instance.examined,
    },
    prices,
    items,
  );
  return {
    ground: { items, puzzles: () => [puzzle], reviving: () => [], isCut: false },
    scene: {
      claimed: instance.claimed,
      places: [{ region: null, elsewhere: false }],
      piece: { examined: instance.examined },
    },
  };
}

/** A budget that nothing here reaches, and that lists everything. */
export const WITHOUT_LIMIT: MendBudget = { states: 5_000_000, listed: 100_000, options: 1_000 };
export const USUAL_BUDGET = MEND_BUDGET;

/** A thing given up as a word: `later(drawers)`, `c16`, `misread(o2)`. */
export function wordOf(givenUp: GivenUp): string {
  switch (givenUp.kind) {
    case "claim":
      return givenUp.claim;
    case "rivals":
      return givenUp.claims.join("|");
    case "assumption":
      return givenUp.assumption;
    case "altered":
    case "misread":
      return `${givenUp.kind}(${givenUp.observation})`;
    default:
      return `${givenUp.kind}(${givenUp.parts.join(",")})`;
  }
}
export const wordsOf = (givenUp: readonly GivenUp[]): string => givenUp.map(wordOf).sort().join(" + ");

export interface InstanceSize {
  readonly parts: number;
  readonly observations: number;
  readonly claims: number;
  /** Share of windows that miss the claimed years. */
  readonly missing: number;
  /** Share of observations with a second window. */
  readonly second: number;
  /** Share of windows with a gap. */
  readonly gaps: number;
  readonly separate: number;
}

/** A random instance on years 1600, 1605 ... 1900, claimed 1750/1770. */
export function randomInstance(seed: number, size: InstanceSize): MendInstance {
  const random = randomSource(seed);
  const numbered = (letter: string, count: number) =>
    Array.from({ length: count }, (_, n) => `${letter}${n}`);
  const parts = numbered("p", size.parts);
  const claims = numbered("c", size.claims);
  const observations = numbered("o", size.observations);
  const price = (most: number) => 1 + random.below(most);
  const windows = observations.flatMap((observation) =>
    Array.from({ length: random.chance(size.second) ? 2 : 1 }, () => ({
      observation,
      years: someYears(random, random.chance(size.missing), random.chance(size.gaps)),
      claims: [...new Set(Array.from({ length: 1 + random.below(3) }, () => random.pick(claims)))].sort(),
    })),
  );
  const pair = (): readonly [string, string] => {
    const first = random.below(size.parts);
    const second = (first + 1 + random.below(size.parts - 1)) % size.parts;
    return [parts[Math.min(first, second)] as string, parts[Math.max(first, second)] as string];
  };
  return {
    ...{ claimed: [1750, 1770], examined: 1900, windows },
    parts: Object.fromEntries(parts.map((part) => [part, { later: price(900), reused: price(1500) }])),
    observations: Object.fromEntries(
      observations.map((observation) => [
        observation,
        { part: random.pick(parts), altered: price(1500), misread: price(1700) },
      ]),
    ),
    claims: Object.fromEntries(claims.map((claim) => [claim, price(2700)])),
    separate: size.parts < 2 ? [] : uniquePairs(Array.from({ length: size.separate }, pair)),
    notSeparate: price(1700),
  };
}

const uniquePairs = (pairs: readonly (readonly [string, string])[]) => [
  ...new Map(pairs.map((pair) => [pair.join(" "), pair])).values(),
];

/** Years of a window: around the claimed years, or before or after them, with or without a gap. */
function someYears(random: RandomSource, isMissing: boolean, hasGap: boolean): Years {
  const step = (from: number, until: number) => from + 5 * random.below((until - from) / 5 + 1);
  const far = (): readonly [number, number] => {
    if (random.chance(0.6)) {
      const from = step(1775, 1870);
      return [from, random.chance(0.5) ? 1900 : step(from, 1900)];
    }
    const until = step(1620, 1745);
    return [random.chance(0.5) ? 1600 : step(1600, until), until];
  };
  const [first, last] = isMissing ? far() : [step(1600, 1755), step(1760, 1900)];
  if (!hasGap || first > 1860) return [[first, last]];
  const [from, until] = [step(Math.max(first, 1600), last), 5];
  return from + until + 5 > last || from === first
    ? [[first, last]]
    : [
        [first, from - 5],
        [from + until, last],
      ];
}
