import type { Claim } from "../../domain/claim.ts";
import type { TermId } from "../../domain/ids.ts";
import { namedTerms } from "../../domain/named-terms.ts";
import type { Neighbourhood, NeighbourhoodAsk } from "../../domain/neighbourhood.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";
import { type BoundedCache, boundedCache } from "./bounded-cache.ts";
import type { Database } from "./database.ts";
import { parseBody, resolveRevision } from "./read-things.ts";

/**
 * The walk. `CROSS JOIN` keeps SQLite from turning a join round: each step searches by the subject, never through all
 * rows. `UNION` ends cycles. Handed over are three short texts, as most of the time would go into rows.
 */
export const WALK = `
WITH RECURSIVE
  above(region) AS (
    SELECT value FROM json_each(:regions)
    UNION
    SELECT term.broader FROM above CROSS JOIN term ON term.id = above.region
     WHERE term.since <= :at AND :at < term.until AND term.broader IS NOT NULL),
  below(region) AS (
    SELECT value FROM json_each(:regions)
    UNION
    SELECT term.id FROM below CROSS JOIN term ON term.broader = below.region
     WHERE term.since <= :at AND :at < term.until),
  scope(region) AS MATERIALIZED (SELECT region FROM above UNION SELECT region FROM below),
  walk(term, depth) AS (
    SELECT seed.value, 0 FROM json_each(:seeds) AS seed CROSS JOIN term ON term.id = seed.value
     WHERE term.since <= :at AND :at < term.until
    UNION
    SELECT lead.target, walk.depth + 1 FROM walk CROSS JOIN lead ON lead.subject = walk.term
     WHERE walk.depth < :maxDepth AND lead.since <= :at AND :at < lead.until
       AND (:everywhere OR lead.region IS NULL OR lead.region IN scope)),
  reached(term, depth) AS MATERIALIZED (SELECT term, min(depth) FROM walk GROUP BY term),
  stated(row, claim) AS MATERIALIZED (
    SELECT statement.row, statement.claim
      FROM reached CROSS JOIN statement ON statement.subject = reached.term
     WHERE statement.since <= :at AND :at < statement.until),
  excepted(row, claim) AS (
    SELECT exception.row, exception.claim
      FROM stated CROSS JOIN exception ON exception.of = stated.claim
     WHERE exception.accepted AND exception.since <= :at AND :at < exception.until
    UNION
    SELECT exception.row, exception.claim
      FROM excepted CROSS JOIN exception ON exception.of = excepted.claim
     WHERE exception.accepted AND exception.since <= :at AND :at < exception.until)
SELECT
  (SELECT json_group_array(row) FROM (SELECT row FROM stated UNION ALL SELECT row FROM excepted)) AS rows,
  (SELECT json_group_object(term, depth) FROM reached) AS depths,
  (SELECT json_group_array(reached.term) FROM reached
    WHERE reached.depth = :maxDepth AND EXISTS (
      SELECT 1 FROM lead WHERE lead.subject = reached.term AND lead.since <= :at AND :at < lead.until
         AND (:everywhere OR lead.region IS NULL OR lead.region IN scope)
         AND lead.target NOT IN (SELECT term FROM reached))) AS cutAt`;

/** A claim and what it names, of a row that never changes. */
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
  const depths = Object.entries(JSON.parse(walked.depths) as Record<TermId, number>) as [TermId, number][];
  const claims = readClaims(database, cache, JSON.parse(walked.rows) as number[]);
  const wanted = new Set<TermId>();
  for (const [term] of depths) wanted.add(term);
  for (const { names } of claims) for (const term of names) wanted.add(term);
  return {
    revision,
    terms: readWithBroader(database, cache, wanted, revision),
    claims: claims.map(({ claim }) => claim),
    depths: new Map(depths.sort(([a], [b]) => (a < b ? -1 : 1))),
    cutAt: (JSON.parse(walked.cutAt) as TermId[]).sort(),
  };
}

function readClaims(
  database: Database,
  { claims }: NeighbourhoodCache,
  rows: readonly number[],
): ReadClaim[] {
  const found: ReadClaim[] = [];
  const missing: number[] = [];
  for (const row of rows) {
    const known = claims.get(row);
    if (known === undefined) missing.push(row);
    else found.push(known);
  }
  if (missing.length > 0)
    for (const { row, body } of database.all<{ row: number; body: string }>(
      `SELECT claim.row, claim.body FROM json_each(:rows) AS asked CROSS JOIN claim ON claim.row = asked.value`,
      { rows: JSON.stringify(missing) },
    )) {
      const claim = parseBody<Claim>(body);
      const read = { claim, names: namedTerms(claim) };
      claims.set(row, read);
      found.push(read);
    }
  return found.sort((a, b) => (a.claim.id < b.claim.id ? -1 : 1));
}

/** These terms and all broader ones, by id. */
function readWithBroader(
  database: Database,
  { terms }: NeighbourhoodCache,
  wanted: Set<TermId>,
  at: RevisionNumber,
): readonly Term[] {
  const found: Term[] = [];
  let missing: TermId[] = [];
  const take = (term: Term): void => {
    found.push(term);
    if (term.broader !== undefined) wanted.add(term.broader);
  };
  const look = (id: TermId): void => {
    const known = terms.get(id);
    if (known !== undefined && known.since <= at && at < known.until) take(known.term);
    else missing.push(id);
  };
  const seen = new Set<TermId>();
  for (;;) {
    // A set hands out what is added while it is gone through: broader terms follow by themselves.
    for (const id of wanted)
      if (!seen.has(id)) {
        seen.add(id);
        look(id);
      }
    if (missing.length === 0) break;
    const rows = database.all<{ since: number; until: number; body: string }>(
      `SELECT term.since, term.until, term.body FROM json_each(:ids) AS asked CROSS JOIN term ON term.id = asked.value
        WHERE term.since <= :at AND :at < term.until`,
      { ids: JSON.stringify(missing), at },
    );
    missing = [];
    for (const { since, until, body } of rows) {
      const term = parseBody<Term>(body);
      terms.set(term.id, { term, since, until });
      take(term);
    }
  }
  return found.sort((a, b) => (a.id < b.id ? -1 : 1));
}
