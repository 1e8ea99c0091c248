import type { RevisionNumber } from "../../domain/revision.ts";
import type { IdColumn, WalkBlock } from "../../ports/walk-block.ts";
import type { Database } from "./database.ts";
import { resolveRevision } from "./read-things.ts";

const TERMS_AT_ONCE = 10_000;
/** Comes after every id. */
const LAST = "~";

/** A column as one value: most of the time would go into rows. `char(10)` ends each id. */
const column = (name: string): string => `CAST(group_concat(${name}, char(10)) || char(10) AS BLOB)`;
const STANDS = "since <= :at AND :at < until";

/** Read from two indexes, as the rows themselves, with all that is said of a term, are ten times as much to read. */
const TERMS = `
SELECT ${column("id")} AS id, ${column("ifnull(broader, '')")} AS broader, max(id) AS last, count(*) AS many FROM (
  SELECT named.id, life.broader FROM term AS named INDEXED BY term_by_id
    CROSS JOIN term AS life INDEXED BY term_life ON life.row = named.row
   WHERE named.id > :after AND life.since <= :at AND :at < life.until ORDER BY named.id LIMIT ${TERMS_AT_ONCE})`;
const STATEMENTS = `
SELECT ${column("subject")} AS subject, ${column("claim")} AS claim FROM statement
 WHERE subject > :after AND subject <= :upTo AND ${STANDS}`;
const LEADS = `
SELECT ${column("subject")} AS subject, ${column("target")} AS target, ${column("ifnull(region, '')")} AS region
  FROM lead WHERE subject > :after AND subject <= :upTo AND ${STANDS}`;
const EXCEPTIONS = `
SELECT ${column("of")} AS of, ${column("claim")} AS claim FROM exception WHERE accepted AND ${STANDS}`;

/** Runs a read of the file and gives what it gives. */
type Read = <Answer>(what: () => Answer) => Promise<Answer>;

/** The rows a walk runs over, each block read by itself: rows of a revision never change. */
export async function* readWalkBlocks(
  read: Read,
  database: Database,
  at: RevisionNumber,
): AsyncGenerator<WalkBlock> {
  await read(() => resolveRevision(database, at));
  const bounds = [""];
  for (let isMore = true; isMore; ) {
    const after = bounds.at(-1) as string;
    const page = await read(() =>
      database.get<{ id: IdColumn | null; broader: IdColumn; last: string; many: number }>(TERMS, {
        after,
        at,
      }),
    );
    if (page?.id) {
      yield { rows: "terms", id: page.id, broader: page.broader };
      bounds.push(page.last);
    }
    isMore = page?.many === TERMS_AT_ONCE;
  }
  bounds[Math.max(1, bounds.length - 1)] = LAST;
  for (const [i, upTo] of bounds.slice(1).entries()) {
    const range = { after: bounds[i] as string, upTo, at };
    const stated = await read(() =>
      database.get<{ subject: IdColumn | null; claim: IdColumn }>(STATEMENTS, range),
    );
    if (stated?.subject) yield { rows: "statements", subject: stated.subject, claim: stated.claim };
    const leads = await read(() =>
      database.get<{ subject: IdColumn | null; target: IdColumn; region: IdColumn }>(LEADS, range),
    );
    if (leads?.subject)
      yield { rows: "leads", subject: leads.subject, target: leads.target, region: leads.region };
  }
  const excepted = await read(() =>
    database.get<{ of: IdColumn | null; claim: IdColumn }>(EXCEPTIONS, { at }),
  );
  if (excepted?.of) yield { rows: "exceptions", of: excepted.of, claim: excepted.claim };
}
