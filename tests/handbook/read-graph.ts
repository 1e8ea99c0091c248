import type { Claim } from "#server/domain/claim.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { Source } from "#server/domain/source.ts";
import type { Term } from "#server/domain/term.ts";
import { readSeed } from "#server/seed/read-seed.ts";

/** What the seed graph holds, by id. */
export interface Graph {
  readonly terms: ReadonlyMap<string, Term>;
  readonly claims: ReadonlyMap<string, Claim>;
  readonly sources: ReadonlyMap<string, Source>;
}

export async function readGraph(): Promise<Graph> {
  const seed = await readSeed("seed-data");
  if (isProblem(seed)) throw new Error(seed.message);
  const graph = {
    terms: new Map<string, Term>(),
    claims: new Map<string, Claim>(),
    sources: new Map<string, Source>(),
  };
  for (const edit of seed.change) {
    if (edit.after === undefined) continue;
    if (edit.kind === "term") graph.terms.set(edit.after.id, edit.after);
    if (edit.kind === "claim") graph.claims.set(edit.after.id, edit.after);
    if (edit.kind === "source") graph.sources.set(edit.after.id, edit.after);
  }
  return graph;
}
