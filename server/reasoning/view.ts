import type { TermId } from "../domain/ids.ts";
import type { Years } from "../domain/years.ts";
import type { Allowed } from "./claim-years.ts";
import type { Context } from "./context.ts";
import { type Algebra, foldTerms } from "./fold.ts";
import type { KnownGraph } from "./known-graph.ts";
import { type Proofs, proofsAlgebra } from "./proofs.ts";
import { type Resolved, resolve } from "./resolve.ts";
import { yearsUnder } from "./years-under.ts";

/** Years of a term from physical claims alone, and from practice claims too (E7). */
export interface Sets {
  readonly possible: Allowed;
  readonly usual: Allowed;
}

/** The graph as it stands in one context. Each question is answered once. */
export interface View {
  readonly context: Context;
  readonly resolve: (term: TermId) => Resolved;
  readonly sets: (term: TermId) => Sets;
  readonly proofs: (term: TermId) => Proofs;
  /** Any other reading of the years, not kept between calls of `under`. */
  readonly under: (algebra: Algebra<Years>) => (term: TermId) => Years;
  /** The term and all that its closed lists lead to, nearest first, each once. */
  readonly reached: (term: TermId) => readonly Resolved[];
}

/** Looks at the graph from one context. */
export function viewFrom(context: Context, graph: KnownGraph): View {
  const resolved = keep((term) => resolve(term, context, graph));
  const under = (algebra: Algebra<Years>) => foldTerms(resolved, algebra);
  const possible = {
    outer: under(yearsUnder("physical", "outer")),
    inner: under(yearsUnder("physical", "inner")),
  };
  const usual = {
    outer: under(yearsUnder("practice", "outer")),
    inner: under(yearsUnder("practice", "inner")),
  };
  const sets = keep(
    (term): Sets => ({
      possible: { outer: possible.outer(term), inner: possible.inner(term) },
      usual: { outer: usual.outer(term), inner: usual.inner(term) },
    }),
  );
  const reached = keep((term) => {
    const found = new Map<TermId, Resolved>([[term, resolved(term)]]);
    for (const { lists } of found.values())
      for (const { claim } of lists)
        for (const way of claim.ways)
          for (const needed of way) if (!found.has(needed)) found.set(needed, resolved(needed));
    return [...found.values()];
  });
  return { context, resolve: resolved, sets, proofs: foldTerms(resolved, proofsAlgebra), under, reached };
}

/** The same function, that works out the answer for each term once. */
function keep<Value>(work: (term: TermId) => Value): (term: TermId) => Value {
  const known = new Map<TermId, Value>();
  return (term) => {
    let found = known.get(term);
    if (found === undefined) {
      found = work(term);
      known.set(term, found);
    }
    return found;
  };
}
