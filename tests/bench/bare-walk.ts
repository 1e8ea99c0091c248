import { DatabaseSync } from "node:sqlite";
import type { NeighbourhoodAsk } from "#server/domain/neighbourhood.ts";
import type { LargeGraph } from "#tests/support/large-graph.ts";

/**
 * The walk in bare SQL, as little as can be done: whole numbers for ids, one row a claim, no revisions, no texts; the
 * rows are handed over as they are. It reads one region with those above it. What the store is measured against.
 */
const BARE_WALK = `
WITH RECURSIVE
 scope(a) AS MATERIALIZED (SELECT a FROM region_anc WHERE r = :region),
 walk(node, depth) AS (
   SELECT value, 0 FROM json_each(:features)
   UNION
   SELECT c.o, w.depth + 1 FROM walk w CROSS JOIN claim c ON c.s = w.node
    WHERE w.depth < :maxDepth AND c.status = 1 AND c.o IS NOT NULL AND (c.region IS NULL OR c.region IN scope)),
 reach(node, depth) AS (SELECT node, min(depth) FROM walk GROUP BY node)
SELECT c.id, c.s, c.kind, c.o, c.grp, c.region, c.lo, c.hi, c.source, r.depth,
       (c.region IS NULL OR c.region IN scope) AS in_scope
  FROM reach r CROSS JOIN claim c ON c.s = r.node
 WHERE c.status = 1 AND (c.o IS NULL OR c.region IS NULL OR c.region IN scope)
 ORDER BY c.id`;

/** A database file with the graph in bare rows, and the walk over it. */
export function openBareWalk(
  path: string,
  graph: LargeGraph,
): { readonly walk: (ask: NeighbourhoodAsk) => readonly unknown[]; readonly close: () => void } {
  const database = new DatabaseSync(path);
  database.exec(`
    PRAGMA journal_mode = wal;
    CREATE TABLE claim(s INT, id INT, kind INT, o INT, grp INT, region INT, lo INT, hi INT, source INT, status INT,
      rev INT, PRIMARY KEY(s, id)) WITHOUT ROWID;
    CREATE TABLE region_anc(r INT, a INT, PRIMARY KEY(r, a)) WITHOUT ROWID;
    BEGIN`);
  const number = new Map<string, number>(graph.terms.map((term, n) => [term.id, n + 1]));
  const numberOf = (term: string | undefined): number | null =>
    term === undefined ? null : (number.get(term) ?? null);
  const broader = new Map(graph.terms.map((term) => [term.id, term.broader]));
  const addAncestor = database.prepare("INSERT INTO region_anc VALUES (?, ?)");
  for (const { id, kind } of graph.terms)
    for (let above = kind === "region" ? id : undefined; above !== undefined; above = broader.get(above))
      addAncestor.run(numberOf(id), numberOf(above));
  const addClaim = database.prepare("INSERT INTO claim VALUES (?, ?, ?, ?, 0, ?, 1700, 1800, 1, ?, 1)");
  for (const [n, claim] of graph.claims.entries()) {
    if (!("scope" in claim)) continue;
    const target = claim.relation === "requires" ? claim.ways[0]?.[0] : undefined;
    const kind = claim.relation === "requires" ? 1 : 2;
    const status = Number(claim.status === "accepted");
    addClaim.run(numberOf(claim.subject), n, kind, numberOf(target), numberOf(claim.scope.region), status);
  }
  database.exec("COMMIT");
  const statement = database.prepare(BARE_WALK);
  return {
    walk: ({ seeds, regions, maxDepth }) =>
      statement.all({
        region: numberOf(regions[0]),
        features: JSON.stringify(seeds.map(numberOf)),
        maxDepth,
      }),
    close: () => database.close(),
  };
}
