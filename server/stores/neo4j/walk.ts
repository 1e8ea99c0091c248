import { standsAt } from "./read-at.ts";

const REGIONS = "MATCH (asked:Term WHERE asked.store = $store AND asked.id IN $regions)";
const VERSION = `(v:TermVersion WHERE ${standsAt("v")})`;
/** Where a term leads. */
const leadOf = (claim: string): string =>
  `-[:LEADS]->(${claim}:ClaimVersion WHERE ${standsAt(claim)} AND ($everywhere OR ${claim}.region IS NULL OR ${claim}.region IN scope))-[:NEEDS]->`;

/**
 * The walk, for `readAt`: what is reached, in how few steps, and, from the depth limit, where it would lead on. `ANY
 * SHORTEST` asks whether a term is reached instead of listing every way to it; a way never takes a relationship twice,
 * which ends cycles. The depth stands in the text, as the language takes no parameter there.
 */
export function walk(maxDepth: number): string {
  if (!(Number.isSafeInteger(maxDepth) && maxDepth >= 0))
    throw new RangeError(`There is no depth ${maxDepth}`);
  const paths =
    maxDepth === 0
      ? "WITH scope, seed AS reached, 0 AS depth"
      : `MATCH way = ANY SHORTEST (seed) ((:Term)${leadOf("claim")}(:Term)){0,${maxDepth}} (reached:Term)
     WITH scope, reached, min(length(way)) / 2 AS depth`;
  return `CALL (at) {
       ${REGIONS}
       MATCH (asked) ((:Term)<-[:OF]-${VERSION}-[:BROADER]->(:Term)){0,} (above:Term)
       RETURN collect(DISTINCT above.id) AS above
     }
     CALL (at) {
       ${REGIONS}
       MATCH (asked) ((:Term)<-[:BROADER]-${VERSION}-[:OF]->(:Term)){0,} (below:Term)
       RETURN collect(DISTINCT below.id) AS below
     }
     WITH at, above + below AS scope
     MATCH (seed:Term WHERE seed.store = $store AND seed.id IN $seeds)<-[:OF]-${VERSION}
     ${paths}
     RETURN collect({
       term: reached.id,
       depth: depth,
       leadsTo: CASE depth WHEN ${maxDepth} THEN [(reached)${leadOf("further")}(next:Term) | next.id] ELSE [] END
     }) AS walked`;
}

/** What bears on the reached terms, for `readAt`: accepted claims about them, exceptions, and the terms of all those. */
export const CLAIMS_AND_TERMS = `
     CALL (at) {
       MATCH (reached:Term WHERE reached.store = $store AND reached.id IN $reached)
       MATCH (reached)-[:LEADS|STATES]->(stated:ClaimVersion WHERE ${standsAt("stated")})
       MATCH (stated) ((:ClaimVersion)-[:OF]->(:Claim)<-[:EXCEPTS]-(e:ClaimVersion WHERE e.accepted AND ${standsAt("e")})){0,} (claim:ClaimVersion)
       RETURN collect(DISTINCT claim) AS claims
     }
     CALL (at, claims) {
       CALL (claims) {
         UNWIND claims AS claim MATCH (claim)-[:NEEDS|NAMES]->(named:Term) RETURN named
         UNION
         MATCH (named:Term WHERE named.store = $store AND named.id IN $reached) RETURN named
       }
       WITH DISTINCT at, named
       MATCH (named) ((:Term)<-[:OF]-${VERSION}-[:BROADER]->(:Term)){0,} (term:Term)
       WITH DISTINCT at, term
       MATCH (term)<-[:OF]-${VERSION}
       RETURN collect(v.body) AS terms
     }
     RETURN [claim IN claims | claim.body] AS claims, terms`;
