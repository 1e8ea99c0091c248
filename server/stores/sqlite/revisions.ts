import type { Change } from "../../domain/change.ts";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import type { Revision, RevisionNumber } from "../../domain/revision.ts";
import type { Page, PageAsk } from "../../ports/store.ts";
import type { Database } from "./database.ts";
import { parseStored } from "./parse-stored.ts";
import { checkFirst } from "./read-things.ts";

/** The columns of a `Revision`, for a SELECT. */
export const REVISION_COLUMNS = "number, at, by, message, content, previous, hash";

/** The newest revision. */
export function newestRevision(database: Database): Revision | undefined {
  const row = database.get<Revision>(`SELECT ${REVISION_COLUMNS} FROM revision ORDER BY number DESC LIMIT 1`);
  return row && revisionOf(row);
}

/** The revision of a number. */
export function findRevision(database: Database, number: RevisionNumber): Revision | undefined {
  const row = database.get<Revision>(`SELECT ${REVISION_COLUMNS} FROM revision WHERE number = :number`, {
    number,
  });
  return row && revisionOf(row);
}

/** A row as the domain has it. */
export const revisionOf = ({ number, at, by, message, content, previous, hash }: Revision): Revision =>
  deepFreeze({ number, at, by, message, content, previous, hash });

/** Newest first. */
export function listRevisions(database: Database, page: PageAsk): Page<Revision> {
  const first = checkFirst(page.first);
  const before = page.after === undefined ? Number.MAX_SAFE_INTEGER : Number(page.after);
  const rows = database.all<Revision>(
    `SELECT ${REVISION_COLUMNS} FROM revision WHERE number < :before ORDER BY number DESC LIMIT :limit`,
    { before, limit: first + 1 },
  );
  const shown = rows.slice(0, first).map(revisionOf);
  return {
    rows: shown,
    cursors: shown.map(({ number }) => String(number)),
    hasMore: rows.length > first,
    total: newestRevision(database)?.number ?? 0,
  };
}

/** The edits of one revision. */
export function readChange(database: Database, number: RevisionNumber): Change | undefined {
  const row = database.get<{ change: string }>("SELECT change FROM revision WHERE number = :number", {
    number,
  });
  return row && parseStored<Change>(row.change);
}
