import { type BoundedCache, boundedCache } from "../../domain/bounded-cache.ts";
import type { Claim } from "../../domain/claim.ts";
import type { TermId } from "../../domain/ids.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";

/** The place of one term in the cache. Claims point to it, so that no id has to be looked up to find what they name. */
export interface TermSlot {
  readonly id: TermId;
  /** As it was read, with the revisions for which that holds. */
  read?: { readonly term: Term; readonly since: RevisionNumber; readonly until: RevisionNumber } | undefined;
  broader?: TermSlot | undefined;
  /** The number of the walk that met it last. */
  metBy: number;
}

/** A claim and what it names beside its subject, which is reached already; of a row that never changes. */
export interface ReadClaim {
  readonly claim: Claim;
  readonly names: readonly TermSlot[];
}

/** Parsed rows kept in memory: some 150 MB when full. */
export interface NeighbourhoodCache {
  /** By row number. */
  readonly claims: BoundedCache<number, ReadClaim>;
  slotOf(term: TermId): TermSlot;
  /** A number for a walk, to mark what it met. */
  startWalk(): number;
  /** For a term that was changed. */
  forgetTerm(term: TermId): void;
  clear(): void;
}

const MOST_CLAIMS = 120_000;
const MOST_TERMS = 100_000;

export function neighbourhoodCache(): NeighbourhoodCache {
  const claims = boundedCache<number, ReadClaim>(MOST_CLAIMS);
  const slots = new Map<TermId, TermSlot>();
  let walks = 0;
  const clear = (): void => {
    claims.clear();
    slots.clear();
  };
  return {
    claims,
    slotOf: (id) => {
      const known = slots.get(id);
      if (known !== undefined) return known;
      const slot: TermSlot = { id, read: undefined, broader: undefined, metBy: 0 };
      slots.set(id, slot);
      return slot;
    },
    startWalk: () => {
      if (slots.size > MOST_TERMS) clear();
      walks++;
      return walks;
    },
    forgetTerm: (id) => {
      const slot = slots.get(id);
      if (slot !== undefined) slot.read = undefined;
    },
    clear,
  };
}
