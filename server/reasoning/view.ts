import type { Hardness } from "../domain/claim.ts";
import type { ClaimId, TermId } from "../domain/ids.ts";
import { ALL_YEARS, meet, type Years } from "../domain/years.ts";
import { type ClosedList, countsFor } from "./bound.ts";
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
  /** The years of each way of a list: its subject's own years with those of all terms of the way. */
  readonly yearsOfWays: (list: ClosedList, level: Hardness) => readonly Years[];
  /** The term and all that its closed lists lead to, nearest first, each once. */
  readonly reached: (term: TermId) => readonly Resolved[];
}

/** Looks at the graph from one context. */
export function viewFrom(context: Context, graph: KnownGraph): View {
  const resolved = keep((term: TermId) => resolve(term, context, graph));
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
    (term: TermId): Sets => ({
      possible: { outer: possible.outer(term), inner: possible.inner(term) },
      usual: { outer: usual.outer(term), inner: usual.inner(term) },
    }),
  );
  const reached = keep((term: TermId) => {
    const found = new Map<TermId, Resolved>([[term, resolved(term)]]);
    for (const { lists } of found.values())
      for (const { claim } of lists)
        for (const way of claim.ways)
          for (const needed of way) if (!found.has(needed)) found.set(needed, resolved(needed));
    return [...found.values()];
  });
  const yearsOfWays = keep((_: `${Hardness} ${ClaimId}`, { claim }: ClosedList, level: Hardness) => {
    const own = resolved(claim.subject)
      .bounds.filter(({ hardness }) => countsFor(hardness, level))
      .reduce<Years>((years, { outer }) => meet(years, outer), ALL_YEARS);
    const years = level === "physical" ? possible.outer : usual.outer;
    return claim.ways.map((way) => way.reduce<Years>((all, needed) => meet(all, years(needed)), own));
  });
  return {
    ...{ context, resolve: resolved, sets, proofs: foldTerms(resolved, proofsAlgebra), under, reached },
    yearsOfWays: (list, level) => yearsOfWays(`${level} ${list.claim.id}`, list, level),
  };
}

/** The same function, that works out the answer for each key once. */
function keep<Key, Value, Rest extends readonly unknown[]>(
  work: (key: Key, ...rest: Rest) => Value,
): (key: Key, ...rest: Rest) => Value {
  const known = new Map<Key, Value>();
  return (key, ...rest) => {
    let found = known.get(key);
    if (found === undefined) {
      found = work(key, ...rest);
      known.set(key, found);
    }
    return found;
  };
}
