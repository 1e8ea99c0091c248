import type { ClaimFilter, TermFilter } from "../../ports/store.ts";
import type { Parameters } from "./database.ts";

/** What a list asks of the rows of its table, which stands there as `thing`. */
export interface Condition {
  /** A test of a row. */
  readonly sql: string;
  readonly parameters: Parameters;
  /** Where the row is one that names something: which entries of `naming` that are, for any row. */
  readonly naming?: string;
  /** An index that begins with what is tested. */
  readonly index?: string;
  /** Where a column has to have one of these values, and rows are counted by it. */
  readonly counted?: { readonly column: string; readonly values: readonly string[] };
}

/** A row that stands at `:at`. */
export const STANDS = "thing.since <= :at AND :at < thing.until";
/** A row that stands and meets all of these. */
export const allOf = (conditions: readonly Condition[]): string =>
  [STANDS, ...conditions.map(({ sql }) => sql)].join(" AND ");

/** Those of the parameters that a statement names: SQLite takes no others. */
export const used = (parameters: Parameters, sql: string): Parameters =>
  Object.fromEntries(
    Object.entries(parameters).filter(([name]) => new RegExp(`:${name}\\b`).test(sql)),
  ) as Parameters;

/** A row with such an entry in the table of names. */
const named = (naming: string, parameters: Parameters): Condition => ({
  sql: `EXISTS (SELECT 1 FROM naming WHERE ${naming} AND naming.row = thing.row)`,
  ...{ naming, parameters },
});

const oneOf = (table: string, column: string, name: string, values: readonly string[]): Condition => ({
  sql: `thing.${column} IN (SELECT value FROM json_each(:${name}))`,
  index: `${table}_by_${column}`,
  parameters: { [name]: JSON.stringify(values) },
  counted: { column, values },
});

/** What a filter of terms asks for. Of what a term names, only the parts that it lists can be kinds of part, unless it is one itself. */
export const termConditions = ({ kinds, broader, parts }: TermFilter): readonly Condition[] => [
  ...(kinds === undefined ? [] : [oneOf("term", "kind", "kinds", kinds)]),
  ...(broader === undefined
    ? []
    : [{ sql: "thing.broader = :broader", index: "term_by_broader", parameters: { broader } }]),
  ...(parts === undefined
    ? []
    : [
        {
          sql: `EXISTS (SELECT 1 FROM json_each(thing.body, '$.parts') AS own
                  WHERE own.value IN (SELECT value FROM json_each(:parts)))`,
          naming: `naming.kind = 'term' AND naming.by = 'term' AND naming.named IN (
            SELECT listed.id FROM json_each(:parts) AS asked CROSS JOIN term AS listed ON listed.id = asked.value
             WHERE listed.kind = 'part' AND listed.since <= :at AND :at < listed.until)`,
          parameters: { parts: JSON.stringify(parts) },
        },
        { sql: "thing.kind <> 'part'", parameters: {} },
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
  ...(subject === undefined
    ? []
    : [{ sql: "thing.subject = :subject", index: "claim_by_subject", parameters: { subject } }]),
  ...(naming === undefined
    ? []
    : [named("naming.kind = 'term' AND naming.named = :naming AND naming.by = 'claim'", { naming })]),
  ...(notAbout === undefined ? [] : [{ sql: "thing.subject IS NOT :notAbout", parameters: { notAbout } }]),
  ...(source === undefined
    ? []
    : [named("naming.kind = 'source' AND naming.named = :source AND naming.by = 'claim'", { source })]),
  ...(of === undefined
    ? []
    : [
        {
          sql: "thing.row IN (SELECT row FROM exception WHERE of IN (SELECT value FROM json_each(:of)))",
          parameters: { of: JSON.stringify(of) },
        },
      ]),
  ...(relations === undefined ? [] : [oneOf("claim", "relation", "relations", relations)]),
];
