import type { Claim } from "../../domain/claim.ts";
import { compareIds } from "../../domain/compare.ts";
import type { TermId } from "../../domain/ids.ts";
import type { Neighbourhood, NeighbourhoodAsk } from "../../domain/neighbourhood.ts";
import type { Term } from "../../domain/term.ts";
import type { Database } from "./database.ts";
import { parseBody, readAt } from "./read-at.ts";
import { CLAIMS_AND_TERMS, walk } from "./walk.ts";

interface Reached {
  readonly term: TermId;
  readonly depth: number;
  readonly leadsTo: readonly TermId[];
}

/** Reads a neighbourhood: one statement for the walk, one for what bears on what it reached. */
export async function readNeighbourhood(database: Database, ask: NeighbourhoodAsk): Promise<Neighbourhood> {
  const { at, walked } = await readAt<{ walked: readonly Reached[] }>(database, ask.at, walk(ask.maxDepth), {
    seeds: [...new Set(ask.seeds)],
    regions: [...new Set(ask.regions)],
    everywhere: ask.regions.length === 0,
  });
  const reached = walked.toSorted((a, b) => (a.term < b.term ? -1 : 1));
  const depths = new Map(reached.map(({ term, depth }) => [term, depth]));
  const { claims, terms } =
    reached.length === 0
      ? { claims: [], terms: [] }
      : await readAt<{ claims: readonly string[]; terms: readonly string[] }>(
          database,
          at,
          CLAIMS_AND_TERMS,
          {
            reached: [...depths.keys()],
          },
        );
  return {
    revision: at,
    terms: terms.map((body) => parseBody<Term>(body)).sort(compareIds),
    claims: claims.map((body) => parseBody<Claim>(body)).sort(compareIds),
    depths,
    cutAt: reached.filter(({ leadsTo }) => leadsTo.some((next) => !depths.has(next))).map(({ term }) => term),
  };
}
