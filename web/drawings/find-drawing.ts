import type { TermId } from "#server/domain/ids.ts";
import { DRAWINGS_OF_FEATURES } from "./drawings-of-features.ts";
import { DRAWINGS_OF_OTHER_TERMS } from "./drawings-of-other-terms.ts";
import { DRAWINGS_OF_WORK } from "./drawings-of-work.ts";
import type { DrawingKey } from "./features/all-drawings.ts";

/** Drawings by the ids of the terms they are shown for. Names only: the drawings themselves are loaded when shown. */
export const DRAWINGS_OF_TERMS: ReadonlyMap<string, DrawingKey> = new Map(
  Object.entries({ ...DRAWINGS_OF_WORK, ...DRAWINGS_OF_FEATURES, ...DRAWINGS_OF_OTHER_TERMS }),
);

/** A tool is drawn by the mark it leaves, and a narrower tool may leave another one. */
const takesOver = (term: string): boolean => !term.startsWith("tool.");

/**
 * The key of the drawing for a term: its own, or that of the nearest broader term that has one.
 * `broaderTerms` stand nearest first, without the term itself.
 */
export const findDrawing = (term: TermId, broaderTerms: readonly TermId[] = []): DrawingKey | undefined =>
  [term, ...(takesOver(term) ? broaderTerms : [])].flatMap((id) => DRAWINGS_OF_TERMS.get(id) ?? [])[0];
