import type { Claim } from "../../domain/claim.ts";
import type { TermId } from "../../domain/ids.ts";
import { namedTerms } from "../../domain/named-terms.ts";
import type { Neighbourhood, NeighbourhoodAsk } from "../../domain/neighbourhood.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";
import type { Database } from "./database.ts";
import type { NeighbourhoodCache, ReadClaim, TermSlot } from "./neighbourhood-cache.ts";
import { parseStored } from "./parse-stored.ts";
import { resolveRevision } from "./read-things.ts";
import { WALK } from "./walk.ts";

/** Reads a neighbourhood. The caller empties the cache of what was changed since it was filled. */
export function readNeighbourhood(
  database: Database,
  cache: NeighbourhoodCache,
  ask: NeighbourhoodAsk,
): Neighbourhood {
  const revision = resolveRevision(database, ask.at);
  const walked = database.get<{ stated: string; excepted: string; depths: string; cutAt: string }>(WALK, {
    regions: JSON.stringify(ask.regions),
    seeds: JSON.stringify(ask.seeds),
    maxDepth: ask.maxDepth,
    at: revision,
    everywhere: Number(ask.regions.length === 0),
  });
  if (walked === undefined) throw new Error("The walk gave no row");
  const depths = Object.entries(JSON.parse(walked.depths)) as [TermId, number][];
  const walk = cache.startWalk();
  const claims = readClaims(database, cache, [...JSON.parse(walked.stated), ...JSON.parse(walked.excepted)]);

  const met: TermSlot[] = [];
  const meet = (slot: TermSlot): void => {
    if (slot.metBy === walk) return;
    slot.metBy = walk;
    met.push(slot);
  };
  for (const [term] of depths) meet(cache.slotOf(term));
  for (const { names } of claims) for (const slot of names) meet(slot);
  return {
    revision,
    terms: readWithBroader(database, cache, { met, meet }, revision),
    claims: claims.map(({ claim }) => claim),
    depths: new Map(depths.sort(([a], [b]) => (a < b ? -1 : 1))),
    cutAt: JSON.parse(walked.cutAt).sort(),
  };
}

/** The claims of these rows, by id. */
function readClaims(database: Database, cache: NeighbourhoodCache, rows: readonly number[]): ReadClaim[] {
  const found: ReadClaim[] = [];
  const missing: number[] = [];
  // Rows are made in the order of ids within a change: taken by number they are nearly sorted, which sorts fast.
  for (const row of Float64Array.from(rows).sort()) {
    const known = cache.claims.get(row);
    if (known === undefined) missing.push(row);
    else found.push(known);
  }
  if (missing.length > 0)
    for (const { row, body } of database.all<{ row: number; body: string }>(
      `SELECT claim.row, claim.body FROM json_each(:rows) AS asked
        CROSS JOIN claim ON claim.row = asked.value`,
      { rows: JSON.stringify(missing) },
    )) {
      const read = readClaim(cache, parseStored<Claim>(body));
      cache.claims.set(row, read);
      found.push(read);
    }
  return found.sort((a, b) => (a.claim.id < b.claim.id ? -1 : 1));
}

function readClaim(cache: NeighbourhoodCache, claim: Claim): ReadClaim {
  const subject = "subject" in claim ? claim.subject : undefined;
  const names = namedTerms(claim).filter((term) => term !== subject);
  return { claim, names: names.map(cache.slotOf) };
}

/** What was met, as it stood, with all broader terms, by id. `meet` adds to what was met, each once. */
function readWithBroader(
  database: Database,
  cache: NeighbourhoodCache,
  { met, meet }: { readonly met: readonly TermSlot[]; readonly meet: (slot: TermSlot) => void },
  at: RevisionNumber,
): readonly Term[] {
  const found: Term[] = [];
  const take = (term: Term, broader: TermSlot | undefined): void => {
    found.push(term);
    if (broader !== undefined) meet(broader);
  };
  for (let next = 0; next < met.length; ) {
    const missing: TermId[] = [];
    for (; next < met.length; next++) {
      const { id, read, broader } = met[next] as TermSlot;
      if (read !== undefined && read.since <= at && at < read.until) take(read.term, broader);
      else missing.push(id);
    }
    if (missing.length === 0) break;
    for (const { since, until, body } of database.all<{ since: number; until: number; body: string }>(
      `SELECT term.since, term.until, term.body FROM json_each(:ids) AS asked
        CROSS JOIN term ON term.id = asked.value WHERE term.since <= :at AND :at < term.until`,
      { ids: JSON.stringify(missing), at },
    )) {
      const term = parseStored<Term>(body);
      const slot = cache.slotOf(term.id);
      slot.read = { term, since, until };
      slot.broader = term.broader === undefined ? undefined : cache.slotOf(term.broader);
      take(term, slot.broader);
    }
  }
  return found.sort((a, b) => (a.id < b.id ? -1 : 1));
}
