import { id, type TermId } from "../domain/ids.ts";
import type { TermKind } from "../domain/term.ts";
import {
  familyOf,
  type GraphPlan,
  HUB_KINDS,
  howMany,
  hubNumbers,
  type Numbers,
  numbersOfKind,
  partNumbers,
} from "./graph-plan.ts";
import { KINDS, type Kind, LASTING, YEARS } from "./proportions.ts";
import { type RandomSource, randomSourceOf } from "./random-source.ts";
import { atDepth, growRegions, pickUneven, type RegionTree } from "./region-tree.ts";
import { drawBetween } from "./weighted.ts";

/** A term by its number; what else there is of it follows from that. */
export interface TermRef {
  readonly number: number;
  readonly kind: TermKind;
}

/** The plan with what all families share. */
export interface World {
  readonly plan: GraphPlan;
  readonly tree: RegionTree;
}
export const worldOf = (plan: GraphPlan): World => ({ plan, tree: growRegions(plan) });

export const termId = ({ kind, number }: TermRef): TermId => id(`${kind}.made-up-${number}`);
export const regionId = (number: number): TermId => termId({ kind: "region", number });
export const partId = (plan: GraphPlan, place: number): TermId =>
  termId({ kind: "part", number: partNumbers(plan).first + place });

/** When and where a thing truly was, in the made-up world; claims about it say so more or less well. */
export interface Life {
  readonly first: number;
  /** Until when it was usual. */
  readonly usual: number;
  /** Unending if it is still made. */
  readonly last: number;
  /** Number of a region. */
  readonly home: number;
}

/** Years by which means are older than what they make. */
const OLDER: Readonly<Partial<Record<TermKind, number>>> = {
  ...{ material: 60, tool: 45, practice: 30, finish: 20, hardware: 15 },
};
const STILL_MADE = 0.55;

export function lifeOf({ plan, tree }: World, { number, kind }: TermRef): Life {
  const family = familyOf(plan, number);
  const random = randomSourceOf(plan.seed, 2, number);
  const first = Math.max(1400, drawBetween(random, YEARS) - (OLDER[kind] ?? 0));
  const usual = first + 10 + drawBetween(random, LASTING);
  const last = random.chance(STILL_MADE) ? Number.POSITIVE_INFINITY : usual + 10 + random.below(80);
  const home = random.chance(0.6) ? homeOf({ plan, tree }, family) : anyRegion(random, tree);
  return { first, usual, last, home };
}

/** Where most things of a family come from. */
export const homeOf = ({ plan, tree }: World, family: number): number =>
  anyRegion(randomSourceOf(plan.seed, 3, family), tree);

function anyRegion(random: RandomSource, tree: RegionTree): number {
  const deep = tree.byDepth.slice(2).filter((regions) => regions.length > 0);
  const levels = deep.length > 0 ? deep : tree.byDepth;
  return pickUneven(random, levels[random.below(levels.length)] as readonly number[]);
}

/** Years that it takes for a thing to come from its home to another region; none within the same large region. */
export function lagTo({ plan, tree }: World, { home }: Life, region: number): number {
  const [from, to] = [atDepth(tree, home, 2), atDepth(tree, region, 2)];
  return from === to ? 0 : 3 + randomSourceOf(plan.seed, 4, from, to).below(15);
}

const pickNumber = (random: RandomSource, numbers: Numbers): number =>
  numbers.first + random.below(howMany(numbers));
const pickEarly = (random: RandomSource, numbers: Numbers): number =>
  numbers.first + random.skewed(howMany(numbers));

/** A term of a kind: of this family, seldom of one before it; the early ones of a kind more often. None where there is none. */
export function pickTerm(
  random: RandomSource,
  plan: GraphPlan,
  family: number,
  kind: Kind,
): TermRef | undefined {
  const from = family > 0 && random.chance(0.06) ? random.below(family) : family;
  const numbers = numbersOfKind(plan, from, kind);
  return howMany(numbers) === 0 ? undefined : { kind, number: pickEarly(random, numbers) };
}

/** Of 100 means, the hubs. */
const HUBS = 0.2;

/** As `pickTerm`, or one of the few that things of all families are made with. */
export function pickMeans(
  random: RandomSource,
  plan: GraphPlan,
  family: number,
  kind: Kind,
): TermRef | undefined {
  return (
    (random.chance(HUBS) ? pickHub(random, plan, kind) : undefined) ?? pickTerm(random, plan, family, kind)
  );
}

/** A hub of a kind, the first ones very much more often. */
export function pickHub(random: RandomSource, plan: GraphPlan, kind: Kind): TermRef | undefined {
  const places = HUB_KINDS.flatMap((each, place) => (each === kind ? [place] : []));
  if (places.length === 0) return undefined;
  const round = random.skewed(1 + random.skewed(Math.ceil(plan.hubs / HUB_KINDS.length)));
  const place = round * HUB_KINDS.length + random.pick(places);
  return place < plan.hubs ? { kind, number: hubNumbers(plan).first + place } : undefined;
}

/** A hub of a kind, each as often. */
export function pickAnyHub(random: RandomSource, plan: GraphPlan, kind: Kind): TermRef | undefined {
  const places = Array.from({ length: plan.hubs }, (_, place) => place).filter(
    (place) => HUB_KINDS[place % HUB_KINDS.length] === kind,
  );
  return places.length === 0 ? undefined : { kind, number: hubNumbers(plan).first + random.pick(places) };
}

/** A feature of the family, each as often. */
export function pickFeature(random: RandomSource, plan: GraphPlan, family: number): TermRef {
  return { kind: "feature", number: pickNumber(random, numbersOfKind(plan, family, "feature")) };
}

/** All terms of a family. */
export function* termsOfFamily(plan: GraphPlan, family: number): Generator<TermRef> {
  for (const kind of Object.keys(KINDS) as Kind[]) {
    const { first, end } = numbersOfKind(plan, family, kind);
    for (let number = first; number < end; number++) yield { kind, number };
  }
}
