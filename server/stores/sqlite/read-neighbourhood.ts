import type { Claim } from "../../domain/claim.ts";
import type { TermId } from "../../domain/ids.ts";
import { namedTerms } from "../../domain/named-terms.ts";
import type { Neighbourhood, NeighbourhoodAsk } from "../../domain/neighbourhood.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";
import { type BoundedCache, boundedCache } from "./bounded-cache.ts";
import type { Database } from "./database.ts";
import { parseBody, resolveRevision } from "./read-things.ts";
import { WALK } from "./walk.ts";

/** A claim and what it names beside its subject, which is reached already; of a row that never changes. */
interface ReadClaim {
  readonly claim: Claim;
  readonly names: readonly TermId[];
}
/** A term with the revisions for which it was read. */
interface ReadTerm {
  readonly term: Term;
  readonly since: RevisionNumber;
  readonly until: RevisionNumber;
}

/** Parsed rows kept in memory, some 100 MB when full. */
export interface NeighbourhoodCache {
  readonly claims: BoundedCache<number, ReadClaim>;
  readonly terms: BoundedCache<TermId, ReadTerm>;
}
export const neighbourhoodCache = (): NeighbourhoodCache => ({
  claims: boundedCache(120_000),
  terms: boundedCache(40_000),
});

/** Reads a neighbourhood. The caller empties the cache of what was changed since it was filled. */
export function readNeighbourhood(
  database: Database,
  cache: NeighbourhoodCache,
  ask: NeighbourhoodAsk,
): Neighbourhood {
  const revision = resolveRevision(database, ask.at);
  const walked = database.get<{ rows: string; depths: string; cutAt: string }>(WALK, {
    regions: JSON.stringify(ask.regions),
    seeds: JSON.stringify(ask.seeds),
    maxDepth: ask.maxDepth,
    at: revision,
    everywhere: Number(ask.regions.length === 0),
  });
  if (walked === undefined) throw new Error("The walk gave no row");
  const depths = Object.entries(JSON.parse(walked.depths)) as [TermId, number][];
  const claims = readClaims(database, cache, JSON.parse(walked.rows));
  const named = new Set(depths.map(([term]) => term));
  for (const { names } of claims) for (const term of names) named.add(term);
  return {
    revision,
    terms: readWithBroader(database, cache, named, revision),
    claims: claims.map(({ claim }) => claim),
    depths: new Map(depths.sort(([a], [b]) => (a < b ? -1 : 1))),
    cutAt: JSON.parse(walked.cutAt).sort(),
  };
}

/** The claims of these rows, by id. */
function readClaims(
  database: Database,
  { claims }: NeighbourhoodCache,
  rows: readonly number[],
): ReadClaim[] {
  const found: ReadClaim[] = [];
  const missing: number[] = [];
  // Rows are made in the order of ids within a change: taken by number they are nearly sorted, which sorts fast.
  for (const row of Float64Array.from(rows).sort()) {
    const known = claims.get(row);
    if (known === undefined) missing.push(row);
    else found.push(known);
  }
  const read =
    missing.length === 0
      ? []
      : database.all<{ row: number; body: string }>(
          `SELECT claim.row, claim.body FROM json_each(:rows) AS asked
            CROSS JOIN claim ON claim.row = asked.value`,
          { rows: JSON.stringify(missing) },
        );
  for (const { row, body } of read) {
    const claim = parseBody<Claim>(body);
    const subject = "subject" in claim ? claim.subject : undefined;
    const entry = { claim, names: namedTerms(claim).filter((term) => term !== subject) };
    claims.set(row, entry);
    found.push(entry);
  }
  return found.sort((a, b) => (a.claim.id < b.claim.id ? -1 : 1));
}

/** These terms and all broader ones, by id. */
function readWithBroader(
  database: Database,
  { terms }: NeighbourhoodCache,
  named: Set<TermId>,
  at: RevisionNumber,
): readonly Term[] {
  const found: Term[] = [];
  const queue = [...named];
  const take = (term: Term): void => {
    found.push(term);
    if (term.broader === undefined || named.has(term.broader)) return;
    named.add(term.broader);
    queue.push(term.broader);
  };
  for (let next = 0; next < queue.length; ) {
    const missing: TermId[] = [];
    for (; next < queue.length; next++) {
      const id = queue[next] as TermId;
      const known = terms.get(id);
      if (known !== undefined && known.since <= at && at < known.until) take(known.term);
      else missing.push(id);
    }
    if (missing.length === 0) break;
    for (const { since, until, body } of database.all<{ since: number; until: number; body: string }>(
      `SELECT term.since, term.until, term.body FROM json_each(:ids) AS asked
        CROSS JOIN term ON term.id = asked.value WHERE term.since <= :at AND :at < term.until`,
      { ids: JSON.stringify(missing), at },
    )) {
      const term = parseBody<Term>(body);
      terms.set(term.id, { term, since, until });
      take(term);
    }
  }
  return found.sort((a, b) => (a.id < b.id ? -1 : 1));
}
