import type { RevisionNumber } from "../../domain/revision.ts";
import { idColumn, type WalkBlock } from "../../ports/walk-block.ts";
import type { Database } from "./database.ts";
import { readAt, standsAt } from "./read-at.ts";

const NODES_AT_ONCE = 5_000;
/** Comes after every id. */
const LAST = "~";

const TERMS = `
  MATCH (v:TermVersion) WHERE v.store = $store AND v.id > $after AND ${standsAt("v")}
  WITH v ORDER BY v.id LIMIT ${NODES_AT_ONCE}
  OPTIONAL MATCH (v)-[:BROADER]->(above:Term)
  WITH v.id AS id, coalesce(above.id, "") AS broader ORDER BY id
  RETURN collect(id) AS ids, collect(broader) AS broader`;
const SUBJECTS = "MATCH (t:Term) WHERE t.store = $store AND $after < t.id <= $upTo";
const STATEMENTS = `
  ${SUBJECTS}
  MATCH (t)-[:LEADS|STATES]->(c:ClaimVersion WHERE ${standsAt("c")})
  RETURN collect(t.id) AS subjects, collect(c.id) AS claims`;
const LEADS = `
  ${SUBJECTS}
  MATCH (t)-[:LEADS]->(c:ClaimVersion WHERE ${standsAt("c")})-[:NEEDS]->(target:Term)
  RETURN collect(t.id) AS subjects, collect(target.id) AS targets, collect(coalesce(c.region, "")) AS regions`;
const EXCEPTIONS = `
  CALL () {
    MATCH (c:Claim) WHERE c.store = $store AND c.id > $after
    WITH c ORDER BY c.id LIMIT ${NODES_AT_ONCE}
    RETURN collect(c) AS page
  }
  CALL (at, page) {
    UNWIND page AS c
    MATCH (c)<-[:EXCEPTS]-(e:ClaimVersion WHERE e.accepted AND ${standsAt("e")})
    RETURN collect(c.id) AS of, collect(e.id) AS claims
  }
  RETURN of, claims, size(page) AS many, last(page).id AS last`;

type Ids = readonly string[];

/** The rows a walk runs over, page by page: rows of a revision never change. */
export async function* readWalkBlocks(database: Database, at: RevisionNumber): AsyncGenerator<WalkBlock> {
  const bounds = [""];
  for (let isMore = true; isMore; ) {
    const page = await readAt<{ ids: Ids; broader: Ids }>(database, at, TERMS, { after: bounds.at(-1) });
    if (page.ids.length > 0) {
      yield { rows: "terms", id: idColumn(page.ids), broader: idColumn(page.broader) };
      bounds.push(page.ids.at(-1) as string);
    }
    isMore = page.ids.length === NODES_AT_ONCE;
  }
  bounds[Math.max(1, bounds.length - 1)] = LAST;
  for (const [i, upTo] of bounds.slice(1).entries()) {
    const range = { after: bounds[i], upTo };
    const stated = await readAt<{ subjects: Ids; claims: Ids }>(database, at, STATEMENTS, range);
    yield { rows: "statements", subject: idColumn(stated.subjects), claim: idColumn(stated.claims) };
    const leads = await readAt<{ subjects: Ids; targets: Ids; regions: Ids }>(database, at, LEADS, range);
    yield {
      rows: "leads",
      subject: idColumn(leads.subjects),
      target: idColumn(leads.targets),
      region: idColumn(leads.regions),
    };
  }
  for (let [after, isMore] = ["", true]; isMore; ) {
    const page = await readAt<{ of: Ids; claims: Ids; many: number; last: string | null }>(
      database,
      at,
      EXCEPTIONS,
      { after },
    );
    yield { rows: "exceptions", of: idColumn(page.of), claim: idColumn(page.claims) };
    after = page.last ?? LAST;
    isMore = page.many === NODES_AT_ONCE;
  }
}
