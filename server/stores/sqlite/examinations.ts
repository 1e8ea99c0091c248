import { canonicalJson } from "../../domain/canonical-json.ts";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import type { Examination, Piece } from "../../domain/examination.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import type { LeftOut, Page, PageAsk } from "../../ports/store.ts";
import type { Database } from "./database.ts";
import { parseStored } from "./parse-stored.ts";
import { checkFirst } from "./read-things.ts";

interface ExaminationRow {
  readonly id: string;
  readonly version: number;
  readonly undo_to: number | null;
  readonly deleted: number;
  readonly changed_at: string;
  readonly piece: string;
}
/** The columns of `ExaminationRow`, for a SELECT. */
export const EXAMINATION_COLUMNS = "id, version, undo_to, deleted, changed_at, piece";

/** A version as the domain has it. */
export const examinationOf = (row: ExaminationRow): Examination =>
  deepFreeze({
    id: row.id as ExaminationId,
    version: row.version,
    ...(row.undo_to === null ? {} : { undoTo: row.undo_to }),
    deleted: row.deleted === 1,
    changedAt: row.changed_at,
    piece: parseStored<Piece>(row.piece),
  });

/** One version, or the newest. */
export function findExamination(
  database: Database,
  id: ExaminationId,
  version?: number,
): Examination | undefined {
  const row = database.get<ExaminationRow>(
    `SELECT ${EXAMINATION_COLUMNS} FROM examination
      WHERE id = :id AND (version = :version OR :version IS NULL AND newest = 1)`,
    { id, version: version ?? null },
  );
  return row && examinationOf(row);
}

/** Adds a version, which becomes the newest. Inside a write. */
export function addVersion(database: Database, next: Examination): void {
  database.run("UPDATE examination SET newest = 0 WHERE id = :id AND newest = 1", { id: next.id });
  database.run(
    `INSERT INTO examination (id, version, undo_to, deleted, changed_at, newest, piece)
     VALUES (:id, :version, :undoTo, :deleted, :changedAt, 1, :piece)`,
    {
      id: next.id,
      version: next.version,
      undoTo: next.undoTo ?? null,
      deleted: Number(next.deleted),
      changedAt: next.changedAt,
      piece: canonicalJson(next.piece),
    },
  );
}

/** The newest versions that are not deleted and not left out, last changed first. */
export function listExaminations(database: Database, page: PageAsk, leftOut?: LeftOut): Page<Examination> {
  const first = checkFirst(page.first);
  const [changedAt = "", id = ""] = page.after?.split("~") ?? [];
  const [where, named] = admitting(leftOut);
  const rows = database.all<ExaminationRow>(
    `SELECT ${EXAMINATION_COLUMNS} FROM examination
      WHERE newest = 1 AND deleted = 0 AND ${where}
        AND (:fromTop OR changed_at < :changedAt OR changed_at = :changedAt AND id > :id)
      ORDER BY changed_at DESC, id LIMIT :limit`,
    { ...named, fromTop: Number(page.after === undefined), changedAt, id, limit: first + 1 },
  );
  const total = database.get<{ total: number }>(
    `SELECT count(*) AS total FROM examination WHERE newest = 1 AND deleted = 0 AND ${where}`,
    named,
  );
  const shown = rows.slice(0, first).map(examinationOf);
  return {
    rows: shown,
    cursors: shown.map((row) => `${row.changedAt}~${row.id}`),
    hasMore: rows.length > first,
    total: total?.total ?? 0,
  };
}

/** The condition that leaves examinations out, with what it names. */
function admitting(leftOut: LeftOut | undefined): readonly [string, Readonly<Record<string, string>>] {
  if (leftOut === undefined) return ["1", {}];
  const { kind, by, unless } = leftOut;
  const has = (name: string) => `EXISTS (SELECT 1 FROM card_key AS k WHERE k.kind = :kind
    AND k.name = :${name}Name AND k.value = :${name}Value AND k.id = examination.id)`;
  const named = { kind, byName: by.name, byValue: by.value };
  if (unless === undefined) return [`NOT ${has("by")}`, named];
  return [
    `NOT (${has("by")} AND NOT ${has("unless")})`,
    { ...named, unlessName: unless.name, unlessValue: unless.value },
  ];
}
