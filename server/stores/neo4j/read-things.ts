import type { RevisionNumber } from "../../domain/revision.ts";
import { type Tally, tallyKey } from "../../domain/tally.ts";
import type { ClaimFilter, Page, PageAsk, TermFilter } from "../../ports/store.ts";
import type { Database, Parameters } from "./database.ts";
import { checkFirst, parseBody, readAt, standsAt } from "./read-at.ts";
import { readTally } from "./tally.ts";
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
  /** Where one of the conditions is that of these kinds of term or relations, by which things are counted. */
  readonly counted?: readonly string[] | undefined;
}

const talliedFor = (kind: Kind, counted: Wanted["counted"], tally: Tally): number =>
  counted === undefined
    ? (tally[tallyKey(kind)] ?? 0)
    : [...new Set(counted)].reduce((sum, what) => sum + (tally[tallyKey(kind, what)] ?? 0), 0);

/** One page of what stands at a revision and is wanted, by id. */
export async function listThings<Thing extends { readonly id: string }>(
  database: Database,
  kind: Kind,
  { patterns, conditions, parameters, counted }: Wanted,
  page: PageAsk,
  at: RevisionNumber | undefined,
): Promise<Page<Thing>> {
  const first = checkFirst(page.first);
  const version = `(v:${LABELS[kind]}Version {store: $store})`;
  const matches = [...patterns.map((pattern) => `MATCH ${pattern}`), `MATCH ${version}`].join(" ");
  const standing = [standsAt("v"), ...conditions].join(" AND ");
  const isCounted = patterns.length === 0 && conditions.length === Number(counted !== undefined);
  const total = isCounted ? "NULL AS total" : "count(DISTINCT v) AS total";
  const found = await readAt<{ total: number | null; rows: readonly { id: string; body: string }[] }>(
    database,
    at,
    `CALL (at) { ${isCounted ? "" : `${matches} WHERE ${standing}`} RETURN ${total} }
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
    total: found.total ?? talliedFor(kind, counted, await readTally(database.read, found.at)),
  };
}

/** All that stands at a revision, or the newest, and is wanted, in slices by id. */
export async function* sliceThings<Thing>(
  database: Database,
  kind: Kind,
  { patterns, conditions, parameters }: Wanted,
  asked: RevisionNumber | undefined,
): AsyncGenerator<readonly Thing[]> {
  const matches = [...patterns, `(v:${LABELS[kind]}Version {store: $store})`].map((each) => `MATCH ${each}`);
  const standing = [standsAt("v"), ...conditions, "v.id > $after"].join(" AND ");
  let at = asked;
  for (let after = "", isMore = true; isMore; ) {
    const found = await readAt<{ rows: readonly { id: string; body: string }[] }>(
      database,
      at,
      `${matches.join(" ")} WHERE ${standing}
       WITH DISTINCT v ORDER BY v.id LIMIT $limit
       RETURN collect(v {.id, .body}) AS rows`,
      { ...parameters, after, limit: ROWS_AT_ONCE },
    );
    at = found.at;
    after = found.rows.at(-1)?.id ?? "";
    isMore = found.rows.length === ROWS_AT_ONCE;
    if (found.rows.length > 0) yield found.rows.map(({ body }) => parseBody<Thing>(body));
  }
}
const ROWS_AT_ONCE = 2_000;

/** What a filter of terms asks for. */
export const wantedTerms = ({ kinds, broader, parts }: TermFilter): Wanted => ({
  patterns: [
    ...(broader === undefined ? [] : ["(:Term {store: $store, id: $broader})<-[:BROADER]-(v)"]),
    ...(parts === undefined
      ? []
      : ["(listed:Term WHERE listed.store = $store AND listed.id IN $parts)<-[:NAMES|BROADER]-(v)"]),
  ],
  conditions: [
    ...(kinds === undefined ? [] : ["v.kind IN $kinds"]),
    // Of what a term names, only the parts that it lists can be kinds of part, unless it is one itself.
    ...(parts === undefined ? [] : ['v.kind <> "part"', "v.body =~ $lists"]),
  ],
  parameters: {
    ...{ kinds: kinds ?? null, broader: broader ?? null, parts: parts ?? null },
    lists: parts === undefined ? null : listsOneOf(parts),
  },
  counted: kinds,
});

/** Tells bodies that list one of these kinds of part: in canonical JSON only a key can stand as `"parts":`. */
const listsOneOf = (parts: readonly string[]): string =>
  `(?s).*"parts":\\[[^\\]]*"(${parts.map((part) => part.replace(/[^\w-]/g, "\\$&")).join("|")})"[^\\]]*\\].*`;

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
    counted: relations,
  };
}

/** Everything. */
export const ALL: Wanted = { patterns: [], conditions: [], parameters: {} };
