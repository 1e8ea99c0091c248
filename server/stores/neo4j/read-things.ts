import type { RevisionNumber } from "../../domain/revision.ts";
import type { ClaimFilter, Page, PageAsk, TermFilter } from "../../ports/store.ts";
import type { Database, Parameters } from "./database.ts";
import { checkFirst, parseBody, readAt, standsAt } from "./read-at.ts";
import { type Kind, LABELS } from "./version-row.ts";

/** Those of these ids that stand at a revision, by id. */
export async function readThings<Thing extends { readonly id: string }>(
  database: Database,
  kind: Kind,
  ids: readonly Thing["id"][],
  at: RevisionNumber | undefined,
): Promise<ReadonlyMap<Thing["id"], Thing>> {
  const { bodies } = await readAt<{ bodies: readonly string[] }>(
    database,
    at,
    `UNWIND $ids AS id
     MATCH (v:${LABELS[kind]}Version {store: $store, id: id}) WHERE ${standsAt("v")}
     RETURN collect(v.body) AS bodies`,
    { ids: [...new Set(ids)] },
  );
  return new Map(
    bodies
      .map((body) => parseBody<Thing>(body))
      .sort((a, b) => (a.id < b.id ? -1 : 1))
      .map((thing) => [thing.id, thing]),
  );
}

/** What a filter asks for: patterns that lead to the version `v` from what it names, and conditions on it. */
export interface Wanted {
  readonly patterns: readonly string[];
  readonly conditions: readonly string[];
  readonly parameters: Parameters;
}

/** One page of what stands at a revision and is wanted, by id. */
export async function listThings<Thing extends { readonly id: string }>(
  database: Database,
  kind: Kind,
  { patterns, conditions, parameters }: Wanted,
  page: PageAsk,
  at: RevisionNumber | undefined,
): Promise<Page<Thing>> {
  const first = checkFirst(page.first);
  const version = `(v:${LABELS[kind]}Version {store: $store})`;
  const matches = [...patterns.map((pattern) => `MATCH ${pattern}`), `MATCH ${version}`].join(" ");
  const standing = [standsAt("v"), ...conditions].join(" AND ");
  const found = await readAt<{ total: number; rows: readonly { id: string; body: string }[] }>(
    database,
    at,
    `CALL (at) { ${matches} WHERE ${standing} RETURN count(DISTINCT v) AS total }
     CALL (at) {
       ${matches} WHERE ${standing} AND v.id > $after
       WITH DISTINCT v ORDER BY v.id LIMIT $limit
       RETURN collect(v {.id, .body}) AS rows
     }
     RETURN total, rows`,
    { ...parameters, after: page.after ?? "", limit: first + 1 },
  );
  const shown = found.rows.slice(0, first);
  return {
    rows: shown.map(({ body }) => parseBody<Thing>(body)),
    cursors: shown.map(({ id }) => id),
    hasMore: found.rows.length > first,
    total: found.total,
  };
}

/** All things of a kind that stand at a revision. */
export async function standingThings<Thing>(
  database: Database,
  kind: Kind,
  at: RevisionNumber,
): Promise<readonly Thing[]> {
  const things: Thing[] = [];
  for (let after = "", isMore = true; isMore; ) {
    const rows = await database.read<{ id: string; body: string }>(
      `MATCH (v:${LABELS[kind]}Version {store: $store})
       WHERE v.id > $after AND v.since <= $at AND $at < v.until
       RETURN v.id AS id, v.body AS body ORDER BY id LIMIT $limit`,
      { at, after, limit: ROWS_AT_ONCE },
    );
    for (const { body } of rows) things.push(parseBody<Thing>(body));
    after = rows.at(-1)?.id ?? "";
    isMore = rows.length === ROWS_AT_ONCE;
  }
  return things;
}
const ROWS_AT_ONCE = 5_000;

/** What a filter of terms asks for. */
export const wantedTerms = ({ kinds, broader }: TermFilter): Wanted => ({
  patterns: broader === undefined ? [] : ["(:Term {store: $store, id: $broader})<-[:BROADER]-(v)"],
  conditions: kinds === undefined ? [] : ["v.kind IN $kinds"],
  parameters: { kinds: kinds ?? null, broader: broader ?? null },
});

/** What a filter of claims asks for. */
export function wantedClaims(filter: ClaimFilter): Wanted {
  const { subject, naming, notAbout, source, of, relations } = filter;
  return {
    patterns: [
      ...(subject === undefined
        ? []
        : ["(:Term {store: $store, id: $subject})-[:LEADS|STATES|PROPOSES]->(v)"]),
      ...(naming === undefined
        ? []
        : ["(:Term {store: $store, id: $naming})-[:LEADS|STATES|PROPOSES|NEEDS|NAMES]-(v)"]),
      ...(source === undefined ? [] : ["(:Source {store: $store, id: $source})<-[:CITES]-(v)"]),
      ...(of === undefined
        ? []
        : ["(excepted:Claim WHERE excepted.store = $store AND excepted.id IN $of)<-[:EXCEPTS]-(v)"]),
    ],
    conditions: [
      ...(notAbout === undefined ? [] : ["(v.subject IS NULL OR v.subject <> $notAbout)"]),
      ...(relations === undefined ? [] : ["v.relation IN $relations"]),
    ],
    parameters: Object.fromEntries(
      Object.entries({ subject, naming, notAbout, source, of, relations }).map(([name, value]) => [
        name,
        value ?? null,
      ]),
    ),
  };
}

/** Everything. */
export const ALL: Wanted = { patterns: [], conditions: [], parameters: {} };
