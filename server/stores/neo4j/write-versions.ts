import type { Run } from "./database.ts";
import { LINKS, type Link, linksOf, namedBy } from "./links.ts";
import { STILL_STANDS } from "./migrations.ts";
import { KINDS, type Kind, LABELS, type VersionRow } from "./version-row.ts";

/** Rows of one statement. */
const ROWS_AT_ONCE = 5_000;

/** How a version `v` and a named node `n` are joined; `link` is one row of it. */
function patternOf(link: Link): string {
  const { type, isToVersion = false, properties = [] } = LINKS[link];
  const told = properties.map((name) => `${name}: link.${name}`).join(", ");
  const joined = `-[:${type}${told && ` {${told}}`}]->`;
  return isToVersion ? `(n)${joined}(v)` : `(v)${joined}(n)`;
}

/**
 * Each node that stays is looked for once, however many rows name it, and told by its place in a list from then on. `MERGE`
 * finds it by its unique id, or makes it where a later row says how it stands.
 */
const writeRows = (kind: Kind): string => {
  const kinds = KINDS.filter(
    (each) => each === kind || linksOf(kind).some((link) => LINKS[link].to === each),
  );
  return [
    ...kinds.map(
      (each) => `CALL () {
  UNWIND range(0, size($${each}Ids) - 1) AS place
  MERGE (n:${LABELS[each]} {store: $store, id: $${each}Ids[place]})
  WITH n ORDER BY place
  RETURN collect(n) AS ${each}s
}`,
    ),
    `CALL (${kind}s) {
  UNWIND $rows AS row
  WITH row, ${kind}s[row.thing] AS thing
  CREATE (v:${LABELS[kind]}Version {store: $store, id: row.id})-[:OF]->(thing)
  SET v += row.properties
  WITH v ORDER BY row.at
  RETURN collect(v) AS versions
}`,
    ...linksOf(kind).map(
      (link) => `CALL (versions, ${LINKS[link].to}s) {
  UNWIND $${link} AS link
  WITH link, versions[link.at] AS v, ${LINKS[link].to}s[link.to] AS n
  CREATE ${patternOf(link)}
}`,
    ),
    "RETURN size(versions) AS written",
  ].join("\n");
};
const WRITE: Readonly<Record<Kind, string>> = {
  term: writeRows("term"),
  claim: writeRows("claim"),
  source: writeRows("source"),
};

/** Adds rows of one kind. */
export async function writeVersions(run: Run, kind: Kind, rows: readonly VersionRow[]): Promise<void> {
  for (let at = 0; at < rows.length; at += ROWS_AT_ONCE)
    await run(WRITE[kind], placed(kind, rows.slice(at, at + ROWS_AT_ONCE)));
}

/** The parameters for some rows: the ids of all that they are and name, each once, and the places of these. */
function placed(kind: Kind, rows: readonly VersionRow[]): Readonly<Record<string, unknown>> {
  const places = {
    term: new Map<string, number>(),
    claim: new Map<string, number>(),
    source: new Map<string, number>(),
  };
  const placeOf = (of: Kind, id: string): number => {
    const known = places[of].get(id);
    if (known !== undefined) return known;
    places[of].set(id, places[of].size);
    return places[of].size - 1;
  };
  const links = Object.fromEntries(linksOf(kind).map((link) => [link, [] as object[]]));
  const versions = rows.map((row, at) => {
    for (const link of linksOf(kind))
      for (const { id, told } of namedBy(row, link))
        links[link]?.push({ at, to: placeOf(LINKS[link].to, id), ...told });
    return { at, id: row.id, properties: row.properties, thing: placeOf(kind, row.id) };
  });
  const ids = Object.fromEntries(KINDS.map((each) => [`${each}Ids`, [...places[each].keys()]]));
  return { rows: versions, ...ids, ...links };
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
