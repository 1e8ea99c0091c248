import type { Edit } from "../../domain/change.ts";
import type { Revision } from "../../domain/revision.ts";
import type { Page, PageAsk, PastEdit } from "../../ports/store.ts";
import type { Database } from "./database.ts";
import { STILL_STANDS } from "./migrations.ts";
import { parseStored } from "./parse-stored.ts";
import { checkFirst } from "./read-things.ts";
import { REVISION_COLUMNS, revisionOf } from "./revisions.ts";

type Row = Revision & { readonly before: string | null; readonly after: string | null };

/**
 * Every edit of one thing, newest first, from its rows alone: a revision edited it where a row of it ends or begins.
 * The changes of those revisions, which may hold thousands of other edits, are not read.
 */
export function listEdits(database: Database, kind: Edit["kind"], id: string, page: PageAsk): Page<PastEdit> {
  const first = checkFirst(page.first);
  const edited = `SELECT since AS number FROM ${kind} WHERE id = :id
    UNION SELECT until FROM ${kind} WHERE id = :id AND until <> ${STILL_STANDS}`;
  const rows = database.all<Row>(
    `SELECT ${REVISION_COLUMNS},
        (SELECT body FROM ${kind} WHERE id = :id AND until = number) AS before,
        (SELECT body FROM ${kind} WHERE id = :id AND since = number) AS after
      FROM (${edited}) AS edited CROSS JOIN revision USING (number)
      WHERE number < :newer ORDER BY number DESC LIMIT :limit`,
    { id, newer: page.after === undefined ? STILL_STANDS : Number(page.after), limit: first + 1 },
  );
  const shown = rows.slice(0, first).map((row) => ({ revision: revisionOf(row), edit: editFrom(kind, row) }));
  return {
    rows: shown,
    cursors: shown.map(({ revision }) => String(revision.number)),
    hasMore: rows.length > first,
    total: database.get<{ total: number }>(`SELECT count(*) AS total FROM (${edited})`, { id })?.total ?? 0,
  };
}

const editFrom = (kind: Edit["kind"], { before, after }: Row): Edit =>
  ({
    kind,
    ...(before === null ? {} : { before: parseStored(before) }),
    ...(after === null ? {} : { after: parseStored(after) }),
  }) as Edit;
