import { ASSUMED } from "#server/domain/assumptions.ts";
import type { Claim } from "#server/domain/claim.ts";
import type { Piece } from "#server/domain/examination.ts";
import type { TermId } from "#server/domain/ids.ts";
import type { Term } from "#server/domain/term.ts";
import type { Span } from "#server/domain/years.ts";
import type { Store } from "#server/ports/store.ts";
import { mustReadDating, yearsOfClaim } from "#server/reasoning/claim-years.ts";

/**
 * The full question in a form that databases can be asked too: every way from something seen to something dated, and
 * whether those years leave the claimed ones any room. A way follows accepted `requires` claims whose region is none, the
 * asked one, above or below it, comes to no term twice, and ends at an accepted claim that bounds the years of the last
 * term in the asked region or above it.
 */
export interface DatingQuestion {
  readonly features: readonly TermId[];
  readonly region: TermId;
  readonly claimed: Span;
  readonly maxDepth: number;
}

/** Ids are numbers here: those at the end of made-up ids. */
export interface DatingPath {
  readonly feature: number;
  readonly via: readonly number[];
  readonly dated: number;
  /** The claimed years are impossible if the dated claim holds. */
  readonly isOut: boolean;
}
/** One for each feature, by its number. */
export interface DatingFinding {
  readonly feature: number;
  readonly paths: readonly DatingPath[];
  readonly label: "contradictory" | "consistent" | "silent";
}

export const numberOf = (id: string): number => Number(id.slice(id.lastIndexOf("-") + 1));

/** Infinite years in whole numbers. */
export const NEVER_BEFORE = -9999;
export const NEVER_AFTER = 9999;

export function questionOf({ attribution, observations }: Piece): DatingQuestion {
  const present = observations.filter(({ seen }) => seen === "present").map(({ feature }) => feature);
  const { begin, end, padBegin, padEnd } = mustReadDating(attribution.date, "event");
  return {
    features: [...new Set(present)],
    region: attribution.region as TermId,
    claimed: [begin[0] - padBegin, end[1] + padEnd],
    maxDepth: ASSUMED.maxDepth,
  };
}

/** The findings, of paths in any order. */
export function findingsOf(
  { features }: DatingQuestion,
  paths: readonly DatingPath[],
): readonly DatingFinding[] {
  const byFeature = new Map<number, DatingPath[]>(features.map((feature) => [numberOf(feature), []]));
  for (const path of paths) byFeature.get(path.feature)?.push(path);
  return [...byFeature].map(([feature, own]) => ({
    ...{ feature, paths: own },
    label: own.length === 0 ? "silent" : own.some(({ isOut }) => isOut) ? "contradictory" : "consistent",
  }));
}

/** One text for equal answers. */
export const answerText = (findings: readonly DatingFinding[]): string =>
  findings
    .toSorted((a, b) => a.feature - b.feature)
    .map(({ feature, paths, label }) => {
      const lines = paths.map(
        ({ via, dated, isOut }) => `${[...via, dated].join(" ")}${isOut ? " out" : ""}`,
      );
      return `${feature} ${label}\n${lines.sort().join("\n")}`;
    })
    .join("\n");

/** The years that a claim leaves, from the first to the last of them; none of a claim that bounds nothing. */
export function boundOf(claim: Claim): Span | undefined {
  if (!("when" in claim) || claim.when === undefined) return undefined;
  if (claim.relation === "attested" || claim.relation === "not found in") return undefined;
  const { outer } = yearsOfClaim(claim, ASSUMED);
  const [first, last] = [outer[0], outer.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  return [Math.max(NEVER_BEFORE, first[0]), Math.min(NEVER_AFTER, last[1])];
}

/** What of a claim the question asks for; kept with the claim, which stores hand out again and again. */
interface Part {
  readonly number: number;
  readonly to: readonly TermId[];
  readonly bound: Span | undefined;
}
const parts = new WeakMap<Claim, Part>();

function partOf(claim: Claim): Part {
  const known = parts.get(claim);
  if (known !== undefined) return known;
  const to = claim.relation === "requires" ? [...new Set(claim.ways.flat())] : [];
  const part = { number: numberOf(claim.id), to, bound: boundOf(claim) };
  parts.set(claim, part);
  return part;
}

/** Our way: the neighbourhood from a store, then the ways through it. */
export async function askStore(store: Store, question: DatingQuestion): Promise<readonly DatingFinding[]> {
  const { features, region, claimed, maxDepth } = question;
  const { claims, terms } = await store.neighbourhood({
    ...{ seeds: [...features, region], regions: [region], maxDepth },
  });
  const above = regionsAbove(terms, region);
  const isBelow = (asked: TermId): boolean => above.broaderOf(asked).includes(region);
  const leads = new Map<TermId, { readonly claim: number; readonly to: TermId }[]>();
  const dates = new Map<TermId, { readonly claim: number; readonly isOut: boolean }[]>();
  for (const claim of claims) {
    if (!("subject" in claim) || !("scope" in claim)) continue;
    const { number, to, bound } = partOf(claim);
    const where = claim.scope.region;
    const applies = where === undefined || above.regions.has(where);
    if (to.length > 0 && (applies || isBelow(where)))
      add(leads, claim.subject, ...to.map((next) => ({ claim: number, to: next })));
    if (bound !== undefined && applies)
      add(dates, claim.subject, { claim: number, isOut: bound[1] < claimed[0] || bound[0] > claimed[1] });
  }
  const paths: DatingPath[] = [];
  for (const feature of features) follow(numberOf(feature), feature, [], [feature]);
  return findingsOf(question, paths);

  function follow(feature: number, term: TermId, via: readonly number[], passed: readonly TermId[]): void {
    for (const { claim, isOut } of dates.get(term) ?? []) paths.push({ feature, via, dated: claim, isOut });
    if (via.length === maxDepth) return;
    for (const { claim, to } of leads.get(term) ?? [])
      if (!passed.includes(to)) follow(feature, to, [...via, claim], [...passed, to]);
  }
}

function add<Item>(lists: Map<TermId, Item[]>, term: TermId, ...items: readonly Item[]): void {
  const list = lists.get(term);
  if (list === undefined) lists.set(term, [...items]);
  else list.push(...items);
}

function regionsAbove(terms: readonly Term[], region: TermId) {
  const broader = new Map<TermId, TermId | undefined>();
  for (const term of terms) if (term.kind === "region") broader.set(term.id, term.broader);
  const broaderOf = (from: TermId): readonly TermId[] => {
    const way: TermId[] = [];
    for (let at = broader.get(from); at !== undefined; at = broader.get(at)) way.push(at);
    return way;
  };
  return { broaderOf, regions: new Set([region, ...broaderOf(region)]) };
}
