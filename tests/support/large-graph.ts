import type { Change, Edit } from "#server/domain/change.ts";
import type { Claim } from "#server/domain/claim.ts";
import type { TermId } from "#server/domain/ids.ts";
import type { Term } from "#server/domain/term.ts";
import { numbersOfKind, planGraph } from "#server/generator/graph-plan.ts";
import { makeGraph } from "#server/generator/make-graph.ts";
import { termId } from "#server/generator/world.ts";

/** A whole made-up graph in memory. */
export interface LargeGraph {
  readonly change: Change;
  readonly terms: readonly Term[];
  readonly claims: readonly Claim[];
  /** Terms that can be seen on a piece, by family. */
  readonly features: readonly (readonly TermId[])[];
  /** Regions without narrower ones. */
  readonly leafRegions: readonly TermId[];
}

/** What `npm run generate` makes, with four claims a term. */
export function largeGraph(claims: number, seed = 1): LargeGraph {
  const wishes = { claims, claimsATerm: 4, seed };
  const plan = planGraph(wishes);
  const things = [...makeGraph(wishes)];
  const terms = things.flatMap(({ kind, thing }) => (kind === "term" ? [thing] : []));
  const broader = new Set(terms.map((term) => term.broader));
  return {
    change: things.map(({ kind, thing }) => ({ kind, after: thing }) as Edit),
    terms,
    claims: things.flatMap(({ kind, thing }) => (kind === "claim" ? [thing] : [])),
    features: Array.from({ length: plan.families }, (_, family) => {
      const { first, end } = numbersOfKind(plan, family, "feature");
      return Array.from({ length: end - first }, (_, n) => termId({ kind: "feature", number: first + n }));
    }),
    leafRegions: terms.filter(({ id, kind }) => kind === "region" && !broader.has(id)).map(({ id }) => id),
  };
}
