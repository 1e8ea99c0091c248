/**
 * Begins a statement outside a write: how far the store has come, as `revision` and `sequence`, and only as far as all of it
 * can be found. Neo4j shows what became of a node a moment before its indexes know of the nodes that were made with it. As
 * long as the newest line of the ledger, which is made last, is not found by its number, the numbers before it still hold.
 */
export const NEWEST = `MATCH (store:Store {name: $store})
WITH store.revision AS revision, store.sequence AS sequence,
  coalesce(store.revisionBefore, store.revision) AS revisionBefore,
  coalesce(store.sequenceBefore, store.sequence) AS sequenceBefore
OPTIONAL MATCH (line:Write {store: $store, sequence: sequence})
WITH CASE WHEN line IS NULL THEN revisionBefore ELSE revision END AS revision,
  CASE WHEN line IS NULL THEN sequenceBefore ELSE sequence END AS sequence`;
