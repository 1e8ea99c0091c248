import type { Claim } from "./claim.ts";
import type { TermId } from "./ids.ts";
import type { RevisionNumber } from "./revision.ts";
import type { Term } from "./term.ts";

/** What is asked of the graph for one piece. */
export interface NeighbourhoodAsk {
  /** Features observed, and the attribution's form, style and maker. */
  readonly seeds: readonly TermId[];
  /** Claimed region and the regions of parts; empty: all regions. */
  readonly regions: readonly TermId[];
  /** Hops of `requires` allowed; the claims of a term at the limit are still returned. */
  readonly maxDepth: number;
  readonly at?: RevisionNumber;
}

/**
 * The part of the graph that bears on one piece, on one revision:
 * - `claims`: every accepted claim whose subject was reached from a seed over accepted `requires` claims whose
 *   scope region is none, above or below one of the asked regions; and every accepted `void when` of those claims
 *   (and of those in turn). Sorted by id.
 * - `terms`: the reached terms, everything those claims name, and all broader terms of either. Sorted by id.
 * - `depths`: fewest hops from a seed, by reached term.
 */
export interface Neighbourhood {
  readonly revision: RevisionNumber;
  readonly terms: readonly Term[];
  readonly claims: readonly Claim[];
  readonly depths: ReadonlyMap<TermId, number>;
  /** Terms at the depth limit that would have led on. */
  readonly cutAt: readonly TermId[];
}
