import type { TermId } from "../../domain/ids.ts";
import { ancestors, broaderTerms, isWithin } from "../../domain/region.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";
import type { Store } from "../../ports/store.ts";
import { readFeaturesOn } from "./read-features-on.ts";
import { readParts } from "./read-parts.ts";

/** Features looked for on one kind of part. */
export interface FeaturesOnPart {
  readonly part: TermId;
  readonly features: readonly Term[];
  /** Told at the kind asked for: more are looked for on all these kinds, too many to list. */
  readonly isCut: boolean;
}

/** Features that are listed. */
const MOST_FEATURES = 400;

/**
 * What is looked for on a kind of part: first on the kind itself, then on kinds within it, then on those around it, the
 * nearest first. A feature stands at the first of them that names it. Kinds without a feature are left out, save the one
 * asked for; nothing where there is no such kind of part.
 */
export async function featuresOnPart(
  { store }: { readonly store: Store },
  part: TermId,
  at?: RevisionNumber,
): Promise<readonly FeaturesOnPart[]> {
  const parts = await readParts(store, at);
  if (!parts.some(({ id }) => id === part)) return [];
  const broader = broaderTerms(parts);
  const inside = parts.map(({ id }) => id).filter((id) => id !== part && isWithin(id, part, broader));
  const kinds = [part, ...inside, ...ancestors(part, broader).slice(1)];
  const { features, isCut } = await readFeaturesOn(store, [[part], kinds.slice(1)], MOST_FEATURES, at);
  const taken = new Set<TermId>();
  return kinds
    .map((kind) => {
      const here = features.filter((feature) => !taken.has(feature.id) && feature.parts?.includes(kind));
      for (const feature of here) taken.add(feature.id);
      return { part: kind, features: here, isCut: kind === part && isCut };
    })
    .filter((group) => group.part === part || group.features.length > 0);
}
