import type { Piece } from "../../domain/examination.ts";
import type { TermId } from "../../domain/ids.ts";
import type { Neighbourhood } from "../../domain/neighbourhood.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";
import type { Store } from "../../ports/store.ts";
import { termsOfPiece } from "../terms-of-piece.ts";

/** Steps of `requires` that are followed from a feature. */
const MAX_DEPTH = 6;

/**
 * The part of the graph that bears on a piece, on one revision, with the terms that the piece names and their broader
 * terms (its kinds of part and regions need not be named by any claim).
 */
export async function neighbourhoodOf(
  { store }: { readonly store: Store },
  piece: Piece,
  at: RevisionNumber,
): Promise<Neighbourhood> {
  const { form, style, maker, region } = piece.attribution;
  const stated = (terms: readonly (TermId | undefined)[]) => [
    ...new Set(terms.filter((term) => term !== undefined)),
  ];
  const found = await store.neighbourhood({
    seeds: stated([...piece.observations.map((observation) => observation.feature), form, style, maker]),
    regions: stated([region, ...piece.parts.map((part) => part.region)]),
    maxDepth: MAX_DEPTH,
    at,
  });
  const terms = new Map(found.terms.map((term) => [term.id, term]));
  await addWithBroader(store, terms, termsOfPiece(piece), at);
  return { ...found, terms: [...terms.values()].sort((a, b) => (a.id < b.id ? -1 : 1)) };
}

/** Adds the terms and all their broader terms that are not there yet, one read of the store a level. */
async function addWithBroader(
  store: Store,
  terms: Map<TermId, Term>,
  ids: readonly TermId[],
  at: RevisionNumber,
): Promise<void> {
  const missing = ids.filter((id) => !terms.has(id));
  if (missing.length === 0) return;
  const read = await store.terms(missing, at);
  for (const [id, term] of read) terms.set(id, term);
  const broader = [...read.values()].map((term) => term.broader).filter((id) => id !== undefined);
  await addWithBroader(store, terms, [...new Set(broader)], at);
}
