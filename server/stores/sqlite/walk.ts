/**
 * The walk. `CROSS JOIN` keeps SQLite from turning a join round: each step searches by the subject, never through all
 * rows. `UNION` ends cycles. Handed over are four short texts, as most of the time would go into rows; statements are
 * read twice because keeping them in between costs more.
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
  excepted(row, claim) AS (
    SELECT exception.row, exception.claim
      FROM reached CROSS JOIN statement ON statement.subject = reached.term
      CROSS JOIN exception ON exception.of = statement.claim
     WHERE statement.since <= :at AND :at < statement.until
       AND exception.accepted AND exception.since <= :at AND :at < exception.until
    UNION
    SELECT exception.row, exception.claim
      FROM excepted CROSS JOIN exception ON exception.of = excepted.claim
     WHERE exception.accepted AND exception.since <= :at AND :at < exception.until)
SELECT
  (SELECT json_group_array(statement.row)
     FROM reached CROSS JOIN statement ON statement.subject = reached.term
    WHERE statement.since <= :at AND :at < statement.until) AS stated,
  (SELECT json_group_array(row) FROM excepted) AS excepted,
  (SELECT json_group_object(term, depth) FROM reached) AS depths,
  (SELECT json_group_array(reached.term) FROM reached
    WHERE reached.depth = :maxDepth AND EXISTS (
      SELECT 1 FROM lead WHERE lead.subject = reached.term AND lead.since <= :at AND :at < lead.until
         AND (:everywhere OR lead.region IS NULL OR lead.region IN scope)
         AND lead.target NOT IN (SELECT term FROM reached))) AS cutAt`;
