import type { Claim } from "../../domain/claim.ts";
import { compareIds } from "../../domain/compare.ts";
import { fashionCentre } from "../../domain/fashion-centre.ts";
import type { ClaimId, TermId } from "../../domain/ids.ts";
import { ancestors, broaderTerms, isWithin } from "../../domain/region.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term, TermKind } from "../../domain/term.ts";
import { nextTurn } from "../../ports/next-turn.ts";
import type { Store } from "../../ports/store.ts";
import { type RegionSurvey, regionsNamed } from "./surveys/region-survey.ts";

/** What the graph holds on some regions, as far as it counts: only accepted claims. */
export interface RegionEvidence {
  /** All regions, with what is counted of them. */
  readonly survey: RegionSurvey;
  /** Claims that name one of the regions, one within it, or bear on what was found there; by id. */
  readonly claims: readonly PlacedClaim[];
  /** Kinds of the subjects of those claims. */
  readonly kinds: ReadonlyMap<TermId, TermKind>;
  /** Woods, and features that are nothing but the sight of one (`requires` a wood in every way). */
  readonly woods: ReadonlySet<TermId>;
}

/** A claim with the regions it names. */
export interface PlacedClaim {
  readonly claim: Claim;
  readonly regions: readonly TermId[];
}

const WOOD = "material.wood";
/** Subjects that are looked up at once. */
const SUBJECTS_AT_ONCE = 200;
/** Regions beyond which it is quicker to read every claim than those that name each. */
const MANY_REGIONS = 200;

/**
 * Reads what names these regions or those within them, then what else is claimed of its subjects: as much as there is on the
 * regions, however large the graph. Those that there are not are passed over.
 */
export async function readRegionEvidence(
  { store }: { readonly store: Store },
  survey: RegionSurvey,
  of: readonly TermId[],
  at: RevisionNumber,
): Promise<RegionEvidence> {
  const { broader, regions } = survey;
  const asked = of.filter((region) => regions.has(region));
  const isHere = (region: TermId): boolean => asked.some((one) => isWithin(region, one, broader));
  const within = new Map<ClaimId, Claim>();
  const take = (claim: Claim): void => {
    if (claim.status === "accepted") within.set(claim.id, claim);
  };
  const inside = [...regions.keys()].filter(isHere);
  if (inside.length > MANY_REGIONS) {
    for await (const slice of store.allClaims({}, at))
      for (const claim of slice) if (regionsNamed(claim, isHere).length > 0) take(claim);
  } else
    for (const region of inside)
      for await (const slice of store.allClaims({ naming: region }, at)) slice.forEach(take);

  const about = await readSubjects(store, subjectsOf(within.values()), at);
  const wider = new Set(asked.flatMap((region) => placesAround(region, survey)));
  const claims = new Map([...survey.exclusions, ...within]);
  for (const claim of about.claims)
    if ("scope" in claim && claim.scope.region !== undefined && wider.has(claim.scope.region))
      claims.set(claim.id, claim);
  return {
    survey,
    claims: [...claims.values()].sort(compareIds).map((claim) => ({
      claim,
      regions: regionsNamed(claim, (id) => regions.has(id)),
    })),
    kinds: new Map(about.terms.map(({ id, kind }) => [id, kind])),
    woods: woodsAmong(about.terms, about.claims),
  };
}

/** Where dates of a region are looked for to lay beside its own. */
function placesAround(region: TermId, { broader }: RegionSurvey): readonly TermId[] {
  const centre = fashionCentre(region, broader);
  return [...ancestors(region, broader), ...(centre === undefined ? [] : ancestors(centre, broader))];
}

const subjectsOf = (claims: Iterable<Claim>): readonly TermId[] => [
  ...new Set([...claims].flatMap((claim) => ("subject" in claim ? [claim.subject] : []))),
];

/** Everything that is claimed of some terms, with what the claims name. */
async function readSubjects(
  store: Store,
  subjects: readonly TermId[],
  at: RevisionNumber,
): Promise<{ readonly terms: readonly Term[]; readonly claims: readonly Claim[] }> {
  const terms = new Map<TermId, Term>();
  const claims: Claim[] = [];
  for (let from = 0; from < subjects.length; from += SUBJECTS_AT_ONCE) {
    const seeds = subjects.slice(from, from + SUBJECTS_AT_ONCE);
    const read = await store.neighbourhood({ seeds, regions: [], maxDepth: 0, at });
    for (const term of read.terms) terms.set(term.id, term);
    for (const claim of read.claims) claims.push(claim);
    await nextTurn();
  }
  return { terms: [...terms.values()], claims };
}

function woodsAmong(terms: readonly Term[], claims: readonly Claim[]): ReadonlySet<TermId> {
  const materials = terms.filter(({ kind }) => kind === "material");
  const broader = broaderTerms(materials);
  const woods = new Set(
    materials.map(({ id }) => id).filter((id) => ancestors(id, broader).some((above) => above === WOOD)),
  );
  for (const claim of claims) {
    if (claim.relation !== "requires" || claim.ways.length === 0) continue;
    if (
      claim.ways.every(
        (way) => way.length > 0 && way.every((id) => id.startsWith("material.") && woods.has(id)),
      )
    )
      woods.add(claim.subject);
  }
  return woods;
}
