import type { Change } from "../../../domain/change.ts";
import type { Claim } from "../../../domain/claim.ts";
import { compareText } from "../../../domain/compare.ts";
import type { ClaimId, TermId } from "../../../domain/ids.ts";
import { ancestors, type Broader } from "../../../domain/region.ts";
import type { RevisionNumber } from "../../../domain/revision.ts";
import type { Term, TermKind } from "../../../domain/term.ts";
import { layOn } from "../../../ports/follow-graph.ts";
import { openTurns } from "../../../ports/open-turns.ts";
import type { Store } from "../../../ports/store.ts";
import type { SurveyOptions } from "./survey-options.ts";

/** How many claims there are on a region. */
export interface RegionCount {
  readonly region: TermId;
  /** Claims that name it. */
  readonly own: number;
  /** Claims that name it or a region within it, each once. */
  readonly within: number;
}

/** What is known of all regions of one revision without reading their claims again. Only accepted claims count. */
export interface RegionSurvey {
  readonly regions: ReadonlyMap<TermId, Term>;
  readonly broader: Broader;
  /** Every region with its claims counted, by id. */
  counts(): readonly RegionCount[];
  countOf(region: TermId): RegionCount;
  /** Kinds of the subjects of claims on a region or one within it. */
  kindsWithin(region: TermId): ReadonlySet<TermKind>;
  /** Claims that keep something out of a region, or confine it to others. */
  readonly exclusions: ReadonlyMap<ClaimId, Claim>;
}

/** A survey that can be brought up to the next revision. */
export interface GrowingRegionSurvey extends RegionSurvey {
  /** Or says that the tree of regions is another, so that all has to be counted anew. */
  follow(change: Change, at: RevisionNumber): Promise<"anew" | undefined>;
}

interface Counted {
  own: number;
  within: number;
  readonly kinds: Map<TermKind, number>;
}
const NOTHING: Counted = { own: 0, within: 0, kinds: new Map() };

type Reads = Pick<Store, "allTerms" | "allClaims" | "terms" | "listClaims" | "listTerms">;

/** Half of the time is left to others. */
const restingTurns = () => openTurns({ restAfter: (worked) => worked });

/** Counts the claims of all regions of a revision, in one pass over its terms and claims. */
export async function surveyRegions(
  store: Reads,
  at: RevisionNumber,
  { turn = restingTurns(), onProgress = () => {} }: SurveyOptions = {},
): Promise<GrowingRegionSurvey> {
  const regions = new Map<TermId, Term>();
  const broader = new Map<TermId, TermId>();
  const counted = new Map<TermId, Counted>();
  const exclusions = new Map<ClaimId, Claim>();

  const add = (region: TermId, kind: TermKind | undefined, sign: 1 | -1, of: "own" | "within"): void => {
    const known = counted.get(region) ?? { own: 0, within: 0, kinds: new Map() };
    counted.set(region, known);
    known[of] += sign;
    if (of === "within" && kind !== undefined) known.kinds.set(kind, (known.kinds.get(kind) ?? 0) + sign);
  };
  const lay = (claim: Claim, kind: TermKind | undefined, sign: 1 | -1): void => {
    if (claim.status !== "accepted") return;
    if (claim.relation === "not found in" || claim.relation === "confined to")
      if (sign === 1) exclusions.set(claim.id, claim);
      else exclusions.delete(claim.id);
    const named = regionsNamed(claim, (id) => regions.has(id));
    for (const region of named) add(region, kind, sign, "own");
    for (const region of new Set(named.flatMap((id) => ancestors(id, broader))))
      add(region, kind, sign, "within");
  };
  const put = (term: Term): void => {
    regions.set(term.id, term);
    if (term.broader !== undefined) broader.set(term.id, term.broader);
  };
  const drop = ({ id }: Term): void => {
    regions.delete(id);
    broader.delete(id);
    counted.delete(id);
  };

  const [terms, claims] = [
    await store.listTerms({}, { first: 1 }, at),
    await store.listClaims({}, { first: 1 }, at),
  ];
  let read = 0;
  const tell = (more: number): void => {
    read += more;
    onProgress(read / (terms.total + claims.total));
  };
  const kinds = new Map<TermId, TermKind>();
  for await (const slice of store.allTerms({}, at)) {
    for (const term of slice) {
      kinds.set(term.id, term.kind);
      if (term.kind === "region") put(term);
    }
    tell(slice.length);
    await turn();
  }
  for await (const slice of store.allClaims({}, at)) {
    for (const claim of slice) lay(claim, "subject" in claim ? kinds.get(claim.subject) : undefined, 1);
    tell(slice.length);
    await turn();
  }
  kinds.clear();
  onProgress(1);

  const countOf = (region: TermId): RegionCount => {
    const { own, within } = counted.get(region) ?? NOTHING;
    return { region, own, within };
  };
  return {
    ...{ regions, broader, exclusions, countOf },
    counts: () => [...regions.keys()].sort(compareText).map(countOf),
    kindsWithin: (region) =>
      new Set(
        [...(counted.get(region) ?? NOTHING).kinds].flatMap(([kind, count]) => (count > 0 ? [kind] : [])),
      ),
    follow: async (change, next) => {
      const moved = change.filter((edit) => edit.kind === "term" && isRegion(edit.after ?? edit.before));
      // Whatever lies within a region that was moved counts elsewhere now. No claim names what comes new or is withdrawn.
      if (moved.some(({ before, after }) => before && after && hasMoved(before as Term, after as Term)))
        return "anew";
      for (const { after } of moved) if (after) put(after as Term);
      const claims = change.filter((edit) => edit.kind === "claim");
      const sides = claims.flatMap(({ before, after }) => [before, after]);
      const subjects = sides.flatMap((claim) => (claim && "subject" in claim ? [claim.subject] : []));
      // A subject that is withdrawn with its claims stood a revision before.
      const found = new Map([
        ...(await store.terms([...new Set(subjects)], next - 1)),
        ...(await store.terms([...new Set(subjects)], next)),
      ]);
      await layOn(claims, (edit) => {
        if (edit.kind !== "claim") return;
        for (const [claim, sign] of [[edit.before, -1] as const, [edit.after, 1] as const])
          if (claim) lay(claim, "subject" in claim ? found.get(claim.subject)?.kind : undefined, sign);
      });
      for (const { before, after } of moved) if (before && !after) drop(before as Term);
      return undefined;
    },
  };
}

const isRegion = (term: Term | undefined): boolean => term?.kind === "region";
const hasMoved = (before: Term, after: Term): boolean => before.broader !== after.broader;

/** The regions that a claim names: scope, object, regions it is confined to, ends of a spread. Each once. */
export function regionsNamed(claim: Claim, isRegion: (term: TermId) => boolean): readonly TermId[] {
  const scoped = "scope" in claim && claim.scope.region !== undefined ? [claim.scope.region] : [];
  switch (claim.relation) {
    case "typical of":
      return [...new Set([...scoped, claim.object])].filter(isRegion);
    case "confined to":
      return [...new Set([...scoped, ...claim.regions])].filter(isRegion);
    case "spread to":
      return [...new Set([claim.from, claim.to])].filter(isRegion);
    default:
      return [...scoped, ...("subject" in claim ? [claim.subject] : [])].filter(isRegion);
  }
}
