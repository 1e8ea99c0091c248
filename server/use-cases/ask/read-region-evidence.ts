import type { Claim } from "../../domain/claim.ts";
import type { TermId } from "../../domain/ids.ts";
import { namedTerms } from "../../domain/named-terms.ts";
import { ancestors, type Broader, broaderTerms } from "../../domain/region.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term, TermKind } from "../../domain/term.ts";
import { readAll } from "../../ports/read-all.ts";
import type { Store } from "../../ports/store.ts";

/** What the graph holds on places, as far as it counts: only accepted claims. */
export interface RegionEvidence {
  readonly regions: ReadonlyMap<TermId, Term>;
  readonly broader: Broader;
  /** Claims that name a region anywhere, in the order of their ids. */
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

/**
 * Reads the regions, the claims that name them and the woods of one revision, page after page: as many calls of the store
 * for one region as for three.
 */
export async function readRegionEvidence(
  { store }: { readonly store: Store },
  at?: RevisionNumber,
): Promise<RegionEvidence> {
  const regionTerms = await readAll((page) => store.listTerms({ kinds: ["region"] }, page, at));
  const materials = await readAll((page) => store.listTerms({ kinds: ["material"] }, page, at));
  const all = (await readAll((page) => store.listClaims({}, page, at))).filter(
    ({ status }) => status === "accepted",
  );
  const regions = new Map(regionTerms.map((term) => [term.id, term]));
  const claims = all
    .map((claim) => ({ claim, regions: namedTerms(claim).filter((id) => regions.has(id)) }))
    .filter((placed) => placed.regions.length > 0);
  const subjects = new Set(claims.flatMap(({ claim }) => ("subject" in claim ? [claim.subject] : [])));
  const found = await store.terms([...subjects], at);
  return {
    regions,
    broader: broaderTerms(regionTerms),
    claims,
    kinds: new Map([...found].map(([id, { kind }]) => [id, kind])),
    woods: woodsAmong(materials, all),
  };
}

function woodsAmong(materials: readonly Term[], claims: readonly Claim[]): ReadonlySet<TermId> {
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
