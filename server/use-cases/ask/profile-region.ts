import type { Claim } from "../../domain/claim.ts";
import { compareText } from "../../domain/compare.ts";
import { fashionCentre } from "../../domain/fashion-centre.ts";
import type { SourceId, TermId } from "../../domain/ids.ts";
import { ancestors, type Broader, isWithin } from "../../domain/region.ts";
import type { TermKind } from "../../domain/term.ts";
import { compareDates, type DatesBeside } from "./compare-dates.ts";
import type { PlacedClaim, RegionEvidence } from "./read-region-evidence.ts";
import type { RegionCount, RegionSurvey } from "./surveys/region-survey.ts";

/** practice: what was done, seen or fitted there, and in what style. */
export const FOUND_GROUPS = ["practice", "wood", "form", "shop"] as const;
export type FoundGroup = (typeof FOUND_GROUPS)[number];

/** Something that claims say was there. */
export interface FoundThere {
  readonly subject: TermId;
  readonly group: FoundGroup;
  readonly claims: readonly Claim[];
}

export interface SourceCount {
  readonly source: SourceId;
  readonly claims: number;
}

/** What the graph says of one region and the regions within it, from accepted claims alone. */
export interface RegionProfile extends RegionCount {
  /** More is claimed than is read and laid out at once: what stands around it is told, and the lists are empty. */
  readonly isOutline: boolean;
  /** Regions directly within it. */
  readonly narrower: readonly RegionCount[];
  /** By group, then by how many claims, then by id. */
  readonly found: readonly FoundThere[];
  /** `not found in` it or around it, and `confined to` other regions. */
  readonly notFound: readonly Claim[];
  /** Beside the nearest wider region that has a date for the same. */
  readonly besideWider: readonly DatesBeside[];
  /** The town whose fashion its shops followed, if one is set down. */
  readonly centre: TermId | undefined;
  /** Beside that town, or the nearest region around the town, up to where both lie in one. */
  readonly besideCentre: readonly DatesBeside[];
  /** Most claims first. */
  readonly sources: readonly SourceCount[];
  /** Claims that cite no published source. */
  readonly unsourced: number;
  /** The nearest wider region that has claims of its own or elsewhere in it. */
  readonly wider: TermId | undefined;
  /** Kinds of subject that the wider region has claims on, and this one none. */
  readonly missingKinds: readonly TermKind[];
}

const POSITIVE: readonly Claim["relation"][] = [
  ...(["typical of", "introduced", "attested", "common from", "common until"] as const),
  ...(["current", "active", "discontinued", "confined to"] as const),
];

/** Claims within a region beyond which it is only outlined. */
export const MOST_LAID_OUT = 10_000;

/** What stands around a region, without a claim; undefined where there is no such region. */
export function outlineRegion(survey: RegionSurvey, region: TermId): RegionProfile | undefined {
  const { regions, broader } = survey;
  if (!regions.has(region)) return undefined;
  const count = survey.countOf(region);
  const wider = ancestors(region, broader)
    .slice(1)
    .find((id) => survey.countOf(id).within > count.within);
  const centre = fashionCentre(region, broader);
  return {
    ...count,
    isOutline: true,
    narrower: [...regions.keys()]
      .filter((id) => broader.get(id) === region)
      .sort(compareText)
      .map(survey.countOf),
    centre: centre !== undefined && regions.has(centre) ? centre : undefined,
    wider,
    missingKinds: wider === undefined ? [] : missingKinds(survey, wider, region),
    ...{ found: [], notFound: [], besideWider: [], besideCentre: [], sources: [], unsourced: 0 },
  };
}

/** The profile of one region; undefined where there is no such region. */
export function profileRegion(evidence: RegionEvidence, region: TermId): RegionProfile | undefined {
  const { survey, claims } = evidence;
  const { broader } = survey;
  const outline = outlineRegion(survey, region);
  if (outline === undefined) return undefined;
  const isHere = (id: TermId) => isWithin(id, region, broader);
  const within = claims.filter((placed) => placed.regions.some(isHere));
  const here = within.map(({ claim }) => claim);
  const above = ancestors(region, broader).slice(1);
  const townwards = outline.centre === undefined ? [] : ancestors(outline.centre, broader);
  const ofPlace = (id: TermId) =>
    claims.filter(({ claim }) => "scope" in claim && claim.scope.region === id).map(({ claim }) => claim);
  const scopedHere = here.filter(
    (claim) => "scope" in claim && claim.scope.region !== undefined && isHere(claim.scope.region),
  );
  return {
    ...outline,
    isOutline: false,
    found: foundIn(evidence, within, isHere),
    notFound: claims.filter(({ claim }) => isNotFound(claim, region, evidence)).map(({ claim }) => claim),
    besideWider: compareDates(scopedHere, above.map(ofPlace)),
    besideCentre: compareDates(scopedHere, townwards.filter((id) => !above.includes(id)).map(ofPlace)),
    sources: countSources(here),
    unsourced: here.filter(({ citations }) => citations.every(({ basis }) => basis !== "published")).length,
  };
}

/** Regions that a claim says its subject belongs to. */
function placesOf(claim: Claim): readonly TermId[] {
  if (claim.relation === "typical of")
    return [claim.object, ...(claim.scope.region ? [claim.scope.region] : [])];
  if (claim.relation === "confined to") return claim.regions;
  return "scope" in claim && claim.scope.region ? [claim.scope.region] : [];
}

function foundIn(
  { kinds, woods }: RegionEvidence,
  within: readonly PlacedClaim[],
  isHere: (id: TermId) => boolean,
): readonly FoundThere[] {
  const bySubject = new Map<TermId, Claim[]>();
  for (const { claim } of within) {
    if (!POSITIVE.includes(claim.relation) || !("subject" in claim) || !placesOf(claim).some(isHere))
      continue;
    bySubject.set(claim.subject, [...(bySubject.get(claim.subject) ?? []), claim]);
  }
  const groupOf = (subject: TermId): FoundGroup => {
    if (woods.has(subject)) return "wood";
    const kind = kinds.get(subject);
    return kind === "form" ? "form" : kind === "maker" ? "shop" : "practice";
  };
  return [...bySubject]
    .map(([subject, claims]) => ({ subject, group: groupOf(subject), claims }))
    .sort(
      (a, b) =>
        FOUND_GROUPS.indexOf(a.group) - FOUND_GROUPS.indexOf(b.group) ||
        b.claims.length - a.claims.length ||
        compareText(a.subject, b.subject),
    );
}

/**
 * Whether a claim keeps its subject out of the region: by this region or one around it, or by where else alone it was.
 * What is confined to a region of another country, without a scope, is no news here.
 */
function isNotFound(claim: Claim, region: TermId, { survey: { broader } }: RegionEvidence): boolean {
  if (claim.relation !== "not found in" && claim.relation !== "confined to") return false;
  const scope = claim.scope.region;
  if (claim.relation === "not found in") return scope !== undefined && isWithin(region, scope, broader);
  if (claim.regions.some((home) => isWithin(home, region, broader) || isWithin(region, home, broader)))
    return false;
  if (scope !== undefined) return isWithin(region, scope, broader);
  const country = countryOf(region, broader);
  return country !== undefined && claim.regions.some((home) => countryOf(home, broader) === country);
}

/** The region below its continent: the root and the continents hold what has little to do with each other. */
const countryOf = (region: TermId, broader: Broader): TermId | undefined => ancestors(region, broader).at(-3);

function countSources(claims: readonly Claim[]): readonly SourceCount[] {
  const counts = new Map<SourceId, number>();
  for (const { citations } of claims) {
    const cited = citations.flatMap((citation) => (citation.basis === "published" ? [citation.source] : []));
    for (const source of new Set(cited)) counts.set(source, (counts.get(source) ?? 0) + 1);
  }
  return [...counts]
    .map(([source, claims]) => ({ source, claims }))
    .sort((a, b) => b.claims - a.claims || compareText(a.source, b.source));
}

function missingKinds(survey: RegionSurvey, wider: TermId, region: TermId): readonly TermKind[] {
  const has = survey.kindsWithin(region);
  return [...survey.kindsWithin(wider)].filter((kind) => !has.has(kind)).sort(compareText);
}
