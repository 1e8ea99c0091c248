import type { Edit } from "../../domain/change.ts";
import type { Revision } from "../../domain/revision.ts";
import type { Page, PageAsk, PastEdit } from "../../ports/store.ts";
import type { Database } from "./database.ts";
import { NEWEST } from "./newest.ts";
import { checkFirst, parseBody } from "./read-at.ts";
import { REVISION, revisionOf } from "./revisions.ts";
import { LABELS } from "./version-row.ts";

interface Row {
  readonly revision: Revision;
  readonly before: string | null;
  readonly after: string | null;
}

/** Every edit of one thing, newest first: a revision edited it where a version of it ends or begins. */
export async function listEdits(
  database: Database,
  kind: Edit["kind"],
  id: string,
  page: PageAsk,
): Promise<Page<PastEdit>> {
  const first = checkFirst(page.first);
  const newer = page.after === undefined ? Number.MAX_SAFE_INTEGER : Number(page.after);
  const versions = `MATCH (v:${LABELS[kind]}Version {store: $store, id: $id}) WHERE v.since > 0`;
  const edited = await database.read<{ number: number }>(
    `${NEWEST} ${versions}
     UNWIND [v.since, v.until] AS number
     WITH DISTINCT revision, number WHERE number <= revision
     RETURN number ORDER BY number DESC`,
    { id },
  );
  const left = edited.map(({ number }) => number).filter((number) => number < newer);
  const rows = await database.read<Row>(
    `MATCH (r:Revision) WHERE r.store = $store AND r.number IN $numbers
     OPTIONAL MATCH (b:${LABELS[kind]}Version {store: $store, id: $id}) WHERE b.since > 0 AND b.until = r.number
     OPTIONAL MATCH (a:${LABELS[kind]}Version {store: $store, id: $id, since: r.number})
     RETURN ${REVISION}, b.body AS before, a.body AS after ORDER BY r.number DESC`,
    { id, numbers: left.slice(0, first) },
  );
  const shown = rows.map((row) => ({ revision: revisionOf(row.revision), edit: editFrom(kind, row) }));
  return {
    rows: shown,
    cursors: shown.map(({ revision }) => String(revision.number)),
    hasMore: left.length > first,
    total: edited.length,
  };
}

const editFrom = (kind: Edit["kind"], { before, after }: Row): Edit =>
  ({
    kind,
    ...(before === null ? {} : { before: parseBody(before) }),
    ...(after === null ? {} : { after: parseBody(after) }),
  }) as Edit;
