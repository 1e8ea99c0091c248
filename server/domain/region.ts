import type { TermId } from "./ids.ts";
import type { Term } from "./term.ts";

/** The tree of broader terms: regions within regions, and in the same way forms and kinds of part. */
export type Broader = ReadonlyMap<TermId, TermId>;

/** Reads the tree off the terms. A term without a broader one is a root and is not in the map. */
export function broaderTerms(terms: Iterable<Term>): Broader {
  const broader = new Map<TermId, TermId>();
  for (const term of terms) if (term.broader !== undefined) broader.set(term.id, term.broader);
  return broader;
}

/** The term itself, then what it lies within, nearest first. Ends where a tree with a cycle would repeat. */
export function ancestors(term: TermId, broader: Broader): readonly TermId[] {
  const above: TermId[] = [];
  for (
    let next: TermId | undefined = term;
    next !== undefined && !above.includes(next);
    next = broader.get(next)
  )
    above.push(next);
  return above;
}

/** Whether `term` is `other` or lies somewhere within it. */
export function isWithin(term: TermId, other: TermId, broader: Broader): boolean {
  let next: TermId | undefined = term;
  for (let steps = 0; next !== undefined && steps <= broader.size; steps++) {
    if (next === other) return true;
    next = broader.get(next);
  }
  return false;
}
