import type { TermId } from "../domain/ids.ts";
import type { Bound, ClosedList } from "./bound.ts";
import type { Resolved } from "./resolve.ts";

/** What a walk over the claims computes at each step: years, or proofs of years. */
export interface Algebra<Value> {
  /** Nothing is known: all years. */
  readonly all: Value;
  readonly bound: (bound: Bound) => Value;
  readonly allOf: (values: readonly Value[]) => Value;
  /** Of a closed list, from what each of its ways gives. */
  readonly anyWay: (list: ClosedList, ways: readonly Value[]) => Value;
}

/**
 * Composes along the claims: a term is all of its bounds and lists, a list is any of its ways, a way is all of its terms (E8). A
 * term met again on its own way contributes all years, and a value found under such a cut is not kept (E9).
 */
export function foldTerms<Value>(
  resolve: (term: TermId) => Resolved,
  algebra: Algebra<Value>,
): (term: TermId) => Value {
  const known = new Map<TermId, Value>();
  const depths = new Map<TermId, number>();

  /** `cut`: depth of the shallowest term whose repetition the value rests on; infinite if it rests on none. */
  function visit(term: TermId): { readonly value: Value; readonly cut: number } {
    const kept = known.get(term);
    if (kept !== undefined) return { value: kept, cut: Number.POSITIVE_INFINITY };
    const above = depths.get(term);
    if (above !== undefined) return { value: algebra.all, cut: above };
    const depth = depths.size;
    depths.set(term, depth);
    let cut = Number.POSITIVE_INFINITY;
    const { bounds, lists } = resolve(term);
    const values = bounds.map(algebra.bound);
    for (const list of lists) {
      const ways = list.claim.ways.map((way) =>
        algebra.allOf(
          way.map((needed) => {
            const found = visit(needed);
            cut = Math.min(cut, found.cut);
            return found.value;
          }),
        ),
      );
      values.push(algebra.anyWay(list, ways));
    }
    depths.delete(term);
    const value = algebra.allOf(values);
    if (cut < depth) return { value, cut };
    known.set(term, value);
    return { value, cut: Number.POSITIVE_INFINITY };
  }
  return (term) => visit(term).value;
}
