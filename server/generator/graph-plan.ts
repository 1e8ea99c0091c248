import { KINDS, type Kind, SEED } from "./proportions.ts";

/** What graph is wanted. The same wishes make the same graph. */
export interface Wishes {
  readonly claims: number;
  /** Claims for each term: 1.25 in the seed; more where many hands write about the same things. */
  readonly claimsATerm: number;
  readonly seed: number;
}

/** Terms of a family: things that are made with each other, and whose claims except each other. */
const FAMILY = 400;
/** Tools, materials and so on that things of all families are made with. */
const HUBS_AT_SEED = 24;

/**
 * What is made, by numbers. Terms are numbered: regions, kinds of part, hubs, then family after family. Regions and hubs
 * grow with the root of the number of terms, kinds of part with the fourth root, as the things they divide are not more
 * of a kind in a larger graph; all else grows evenly, so that a piece reaches as much in a large graph as in a small one.
 */
export interface GraphPlan extends Wishes {
  readonly terms: number;
  readonly regions: number;
  readonly parts: number;
  readonly hubs: number;
  readonly families: number;
  readonly sources: number;
}

export function planGraph(wishes: Wishes): GraphPlan {
  const terms = Math.max(100, Math.round(wishes.claims / wishes.claimsATerm));
  const larger = terms / SEED.terms;
  const regions = Math.max(12, Math.round(SEED.regions * Math.min(larger, Math.sqrt(larger))));
  const parts = Math.max(8, Math.round(SEED.parts * Math.min(larger, larger ** 0.25)));
  const hubs = Math.max(6, Math.round(HUBS_AT_SEED * Math.min(larger, Math.sqrt(larger))));
  const families = Math.max(1, Math.floor((terms - regions - parts - hubs) / FAMILY));
  const sources = Math.max(families, Math.round((wishes.claims * SEED.sources) / SEED.claims));
  return { ...wishes, terms, regions, parts, hubs, families, sources };
}

/** Numbers from `first` to before `end`. */
export interface Numbers {
  readonly first: number;
  readonly end: number;
}
export const howMany = ({ first, end }: Numbers): number => end - first;

/** Even shares of `whole` things for the families. */
const shareOf = (plan: GraphPlan, family: number, whole: number, offset = 0): Numbers => ({
  first: offset + Math.floor((whole * family) / plan.families),
  end: offset + Math.floor((whole * (family + 1)) / plan.families),
});

export const regionNumbers = (plan: GraphPlan): Numbers => ({ first: 0, end: plan.regions });
export const partNumbers = ({ regions, parts }: GraphPlan): Numbers => ({
  first: regions,
  end: regions + parts,
});
export const hubNumbers = ({ regions, parts, hubs }: GraphPlan): Numbers => ({
  first: regions + parts,
  end: regions + parts + hubs,
});
export const termNumbers = (plan: GraphPlan, family: number): Numbers =>
  shareOf(plan, family, plan.terms - hubNumbers(plan).end, hubNumbers(plan).end);
export const claimNumbers = (plan: GraphPlan, family: number): Numbers => shareOf(plan, family, plan.claims);
export const sourceNumbers = (plan: GraphPlan, family: number): Numbers =>
  shareOf(plan, family, plan.sources);

/** The family of a term; -1 of what all families share. */
export function familyOf(plan: GraphPlan, term: number): number {
  const { end } = hubNumbers(plan);
  if (term < end) return -1;
  let family = Math.floor(((term - end) * plan.families) / (plan.terms - end));
  while (term >= termNumbers(plan, family).end) family++;
  return family;
}

/** Kinds of hubs, in turn. */
export const HUB_KINDS = [
  "material",
  "tool",
  "practice",
  "tool",
  "material",
  "hardware",
  "practice",
  "finish",
] as const;

const ALL = Object.values(KINDS).reduce((sum, count) => sum + count, 0);

/** Numbers of the terms of one kind in a family: each kind stands together, in the order of `KINDS`. */
export function numbersOfKind(plan: GraphPlan, family: number, kind: Kind): Numbers {
  const { first, end } = termNumbers(plan, family);
  let before = 0;
  for (const [other, count] of Object.entries(KINDS)) {
    if (other === kind) {
      const at = (sum: number): number => first + Math.round(((end - first) * sum) / ALL);
      return { first: at(before), end: at(before + count) };
    }
    before += count;
  }
  throw new RangeError(`No kind ${kind}`);
}
