import type { Graph } from "#server/domain/change.ts";
import type { Claim } from "#server/domain/claim.ts";
import type { ReferenceRow } from "#server/domain/reference-row.ts";
import type { Source } from "#server/domain/source.ts";
import type { Term } from "#server/domain/term.ts";
import type { SeedLine } from "./read-seed-lines.ts";

/** The seed as lists: duplicates and strangers are still in it, so that rules can find them. */
export interface SeedGraph {
  readonly terms: readonly Term[];
  readonly claims: readonly Claim[];
  readonly sources: readonly Source[];
  readonly tables: readonly ReferenceRow[];
}

export function parseSeed(lines: readonly SeedLine[]): SeedGraph {
  const of = <T>(folder: string): readonly T[] =>
    lines.filter((line) => line.folder === folder).map(({ text }) => JSON.parse(text) as T);
  return {
    terms: of<Term>("terms"),
    claims: of<Claim>("claims"),
    sources: of<Source>("sources"),
    tables: of<ReferenceRow>("tables"),
  };
}

export const asGraph = ({ terms, claims, sources }: SeedGraph): Graph => ({
  terms: new Map(terms.map((term) => [term.id, term])),
  claims: new Map(claims.map((claim) => [claim.id, claim])),
  sources: new Map(sources.map((source) => [source.id, source])),
});

/** The seed with one claim changed: what a careless edit would make of it. */
export const withClaim = (seed: SeedGraph, id: string, edit: (claim: Claim) => unknown): SeedGraph => ({
  ...seed,
  claims: seed.claims.map((claim) => (claim.id === id ? (edit(claim) as Claim) : claim)),
});

/** The seed with one term changed. */
export const withTerm = (seed: SeedGraph, id: string, edit: (term: Term) => unknown): SeedGraph => ({
  ...seed,
  terms: seed.terms.map((term) => (term.id === id ? (edit(term) as Term) : term)),
});

/** The seed with one source changed. */
export const withSource = (seed: SeedGraph, id: string, edit: (source: Source) => unknown): SeedGraph => ({
  ...seed,
  sources: seed.sources.map((source) => (source.id === id ? (edit(source) as Source) : source)),
});

/** A thing without one of its fields. */
export function without<T extends object>(thing: T, field: string): Partial<T> {
  return Object.fromEntries(Object.entries(thing).filter(([name]) => name !== field)) as Partial<T>;
}
