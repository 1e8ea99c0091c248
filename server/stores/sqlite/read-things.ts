import type { RevisionNumber } from "../../domain/revision.ts";
import {
  type ClaimFilter,
  LARGEST_PAGE,
  type Page,
  type PageAsk,
  type TermFilter,
} from "../../ports/store.ts";
import type { Database, Parameters } from "./database.ts";
import { parseStored } from "./parse-stored.ts";

export type Kind = "term" | "claim" | "source";

/** The revision to read at. Throws a RangeError if there is no such revision. */
export function resolveRevision(database: Database, at: RevisionNumber | undefined): RevisionNumber {
  const newest = database.get<{ newest: number }>("SELECT max(number) AS newest FROM revision")?.newest ?? 0;
  if (at === undefined) return newest;
  if (!(Number.isInteger(at) && at >= 0 && at <= newest))
    throw new RangeError(`There is no revision ${at}; the newest is ${newest}`);
  return at;
}

/** Those of these ids that stand at a revision, by id. */
export function readThings<Thing extends { readonly id: string }>(
  database: Database,
  kind: Kind,
  ids: readonly Thing["id"][],
  at: RevisionNumber | undefined,
): ReadonlyMap<Thing["id"], Thing> {
  const rows = database.all<{ body: string }>(
    `SELECT thing.body FROM (SELECT DISTINCT value AS id FROM json_each(:ids)) AS asked
      CROSS JOIN ${kind} AS thing ON thing.id = asked.id
      WHERE thing.since <= :at AND :at < thing.until
      ORDER BY thing.id`,
    { ids: JSON.stringify(ids), at: resolveRevision(database, at) },
  );
  return new Map(rows.map(({ body }) => parseStored<Thing>(body)).map((thing) => [thing.id, thing]));
}

/** A condition of a list, with what it asks for. */
export interface Condition {
  readonly sql: string;
  readonly parameters: Parameters;
}

/** One page of what stands at a revision and meets the conditions, by id. */
export function listThings<Thing extends { readonly id: string }>(
  database: Database,
  kind: Kind,
  conditions: readonly Condition[],
  page: PageAsk,
  at: RevisionNumber | undefined,
): Page<Thing> {
  const first = checkFirst(page.first);
  const parameters = Object.assign(
    { at: resolveRevision(database, at) },
    ...conditions.map((condition) => condition.parameters),
  );
  const standing = ["thing.since <= :at AND :at < thing.until", ...conditions.map(({ sql }) => sql)].join(
    " AND ",
  );
  const rows = database.all<{ id: string; body: string }>(
    `SELECT thing.id, thing.body FROM ${kind} AS thing
      WHERE ${standing} AND thing.id > :after ORDER BY thing.id LIMIT :limit`,
    { ...parameters, after: page.after ?? "", limit: first + 1 },
  );
  const total = database.get<{ total: number }>(
    `SELECT count(*) AS total FROM ${kind} AS thing WHERE ${standing}`,
    parameters,
  );
  const shown = rows.slice(0, first);
  return {
    rows: shown.map(({ body }) => parseStored<Thing>(body)),
    cursors: shown.map(({ id }) => id),
    hasMore: rows.length > first,
    total: total?.total ?? 0,
  };
}

/** Throws a RangeError unless a page may hold so many rows. */
export function checkFirst(first: number): number {
  if (Number.isInteger(first) && first >= 1 && first <= LARGEST_PAGE) return first;
  throw new RangeError(`A page holds 1 to ${LARGEST_PAGE} rows, not ${first}`);
}

const oneOf = (column: string, name: string, values: readonly string[]): Condition => ({
  sql: `${column} IN (SELECT value FROM json_each(:${name}))`,
  parameters: { [name]: JSON.stringify(values) },
});

/** What a filter of terms asks for. */
export const termConditions = ({ kinds, broader, parts }: TermFilter): readonly Condition[] => [
  ...(kinds === undefined ? [] : [oneOf("thing.kind", "kinds", kinds)]),
  ...(broader === undefined ? [] : [{ sql: "thing.broader = :broader", parameters: { broader } }]),
  ...(parts === undefined
    ? []
    : [
        {
          sql: `thing.row IN (
              SELECT naming.row FROM json_each(:parts) AS part CROSS JOIN naming
               WHERE naming.kind = 'term' AND naming.named = part.value AND naming.by = 'term')
            AND EXISTS (
              SELECT 1 FROM json_each(thing.body, '$.parts') AS own
               WHERE own.value IN (SELECT value FROM json_each(:parts)))`,
          parameters: { parts: JSON.stringify(parts) },
        },
      ]),
];

/** What a filter of claims asks for. */
export const claimConditions = ({
  subject,
  naming,
  notAbout,
  source,
  of,
  relations,
}: ClaimFilter): readonly Condition[] => [
  ...(subject === undefined ? [] : [{ sql: "thing.subject = :subject", parameters: { subject } }]),
  ...(naming === undefined
    ? []
    : [
        {
          sql: "thing.row IN (SELECT row FROM naming WHERE kind = 'term' AND named = :naming AND by = 'claim')",
          parameters: { naming },
        },
      ]),
  ...(notAbout === undefined ? [] : [{ sql: "thing.subject IS NOT :notAbout", parameters: { notAbout } }]),
  ...(source === undefined
    ? []
    : [
        {
          sql: "thing.row IN (SELECT row FROM naming WHERE kind = 'source' AND named = :source AND by = 'claim')",
          parameters: { source },
        },
      ]),
  ...(of === undefined
    ? []
    : [
        {
          sql: "thing.row IN (SELECT row FROM exception WHERE of IN (SELECT value FROM json_each(:of)))",
          parameters: { of: JSON.stringify(of) },
        },
      ]),
  ...(relations === undefined ? [] : [oneOf("thing.relation", "relations", relations)]),
];
