import type { Run } from "./database.ts";
import { STILL_STANDS } from "./migrations.ts";
import { type Kind, LABELS, type VersionRow } from "./version-row.ts";

/** Rows of one statement. */
const ROWS_AT_ONCE = 1_000;

/** `MERGE` finds what is named by its unique id, or makes the node that stays where a later row says how it stands. */
const writeRows = (kind: Kind): string => {
  const label = LABELS[kind];
  const toTerms = (list: string, relationship: (term: string) => string): string =>
    `FOREACH (id IN row.${list} | MERGE (t:Term {store: $store, id: id}) CREATE ${relationship("t")})`;
  const ofClaims = `
  ${toTerms("leads", (t) => `(${t})-[:LEADS]->(v)`)}
  ${toTerms("states", (t) => `(${t})-[:STATES]->(v)`)}
  ${toTerms("proposes", (t) => `(${t})-[:PROPOSES]->(v)`)}
  ${toTerms("needs", (t) => `(v)-[:NEEDS]->(${t})`)}
  FOREACH (id IN row.excepts | MERGE (c:Claim {store: $store, id: id}) CREATE (v)-[:EXCEPTS]->(c))
  FOREACH (cites IN row.cites | MERGE (s:Source {store: $store, id: cites.source})
    CREATE (v)-[:CITES {place: cites.place, locator: cites.locator, note: cites.note}]->(s))`;
  return `
UNWIND $rows AS row
MERGE (thing:${label} {store: $store, id: row.id})
CREATE (v:${label}Version {store: $store, id: row.id})-[:OF]->(thing)
SET v += row.properties
${kind === "term" ? toTerms("broader", (t) => `(v)-[:BROADER]->(${t})`) : ""}
${kind === "claim" ? ofClaims : ""}
${toTerms("names", (t) => `(v)-[:NAMES]->(${t})`)}`;
};
const WRITE: Readonly<Record<Kind, string>> = {
  term: writeRows("term"),
  claim: writeRows("claim"),
  source: writeRows("source"),
};

/** Adds rows of one kind. */
export async function writeVersions(run: Run, kind: Kind, rows: readonly VersionRow[]): Promise<void> {
  for (let at = 0; at < rows.length; at += ROWS_AT_ONCE)
    await run(WRITE[kind], { rows: rows.slice(at, at + ROWS_AT_ONCE) });
}

/** Ends the rows of these ids that still stand. */
export async function endVersions(
  run: Run,
  kind: Kind,
  ids: readonly string[],
  until: number,
): Promise<void> {
  for (let at = 0; at < ids.length; at += ROWS_AT_ONCE)
    await run(
      `UNWIND $ids AS id
       MATCH (v:${LABELS[kind]}Version {store: $store, id: id}) WHERE v.since < $until AND v.until = ${STILL_STANDS}
       SET v.until = $until`,
      { ids: ids.slice(at, at + ROWS_AT_ONCE), until },
    );
}
