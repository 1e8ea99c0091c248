import { keepInOrder } from "../../chain/change-text.ts";
import type { Change } from "../../domain/change.ts";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import type { Revision, RevisionNumber } from "../../domain/revision.ts";
import type { Page, PageAsk } from "../../ports/store.ts";
import type { Database, Parameters, Run } from "./database.ts";
import { NEWEST } from "./newest.ts";
import { editsText, type PackedEdits } from "./packed-edits.ts";
import { checkFirst } from "./read-at.ts";

/** The properties of a `Revision`, for a RETURN. */
export const REVISION = "r {.number, .at, .by, .message, .content, .previous, .hash} AS revision";

/** Inside a write or outside. */
type Ask = <Row extends object>(cypher: string, parameters?: Parameters) => Promise<readonly Row[]>;

/** The newest revision. */
export async function newestRevision(ask: Ask | Run): Promise<Revision | undefined> {
  const [row] = await ask<{ revision: Revision }>(
    `${NEWEST} MATCH (r:Revision {store: $store, number: revision}) RETURN ${REVISION}`,
  );
  return row && revisionOf(row.revision);
}

/** The revision of a number. */
export async function findRevision(ask: Ask | Run, number: RevisionNumber): Promise<Revision | undefined> {
  const [row] = await ask<{ revision: Revision }>(
    `${NEWEST} MATCH (r:Revision {store: $store, number: $number})
     WHERE r.number <= revision RETURN ${REVISION}`,
    { number },
  );
  return row && revisionOf(row.revision);
}

/** A node as the domain has it. */
export const revisionOf = ({ number, at, by, message, content, previous, hash }: Revision): Revision =>
  deepFreeze({ number, at, by, message, content, previous, hash });

/** Newest first. */
export async function listRevisions(database: Database, page: PageAsk): Promise<Page<Revision>> {
  const first = checkFirst(page.first);
  const before = page.after === undefined ? Number.MAX_SAFE_INTEGER : Number(page.after);
  const [row] = await database.read<{ total: number; rows: readonly Revision[] }>(
    `${NEWEST}
     CALL (revision) {
       MATCH (r:Revision {store: $store}) WHERE r.number < $before AND r.number <= revision
       WITH r ORDER BY r.number DESC LIMIT $limit
       RETURN collect(r {.number, .at, .by, .message, .content, .previous, .hash}) AS rows
     }
     RETURN revision AS total, rows`,
    { before, limit: first + 1 },
  );
  const { total, rows } = row ?? { total: 0, rows: [] };
  const shown = rows.slice(0, first).map(revisionOf);
  return {
    rows: shown,
    cursors: shown.map(({ number }) => String(number)),
    hasMore: rows.length > first,
    total,
  };
}

/** The edits of one revision; it must be one that there is. */
export async function readChange(database: Database, number: RevisionNumber): Promise<Change> {
  const rows = await database.read<PackedEdits>(
    `MATCH (p:ChangePart {store: $store, revision: $number}) WHERE p.part >= 0
     RETURN p.edits AS edits, p.packed AS packed, p.part AS part ORDER BY part`,
    { number },
  );
  return keepInOrder(rows.flatMap((row) => JSON.parse(editsText(row)) as Change));
}
