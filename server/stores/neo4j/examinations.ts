import { deepFreeze } from "../../domain/deep-freeze.ts";
import type { Examination, Piece } from "../../domain/examination.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import type { LeftOut, Page, PageAsk } from "../../ports/store.ts";
import type { Database, Run } from "./database.ts";
import { checkFirst } from "./read-at.ts";

export type VersionNode = Omit<Examination, "piece" | "undoTo"> & {
  readonly undoTo: number | null;
  readonly piece: string;
};
/** The properties of a `VersionNode`. */
export const VERSION_NODE = "v {.id, .version, .undoTo, .deleted, .changedAt, .piece}";

/** A node as the domain has it. */
export const examinationOf = ({ id, version, undoTo, deleted, changedAt, piece }: VersionNode): Examination =>
  deepFreeze({
    id,
    version,
    ...(undoTo === null ? {} : { undoTo }),
    deleted,
    changedAt,
    piece: JSON.parse(piece) as Piece,
  });

/** Finds a version; where it is to be the newest, the one before as long as that cannot be found yet (as at `NEWEST`). */
const matchVersion = (version: string, isNewest: string): string =>
  `OPTIONAL MATCH (found:ExaminationVersion {store: $store, id: e.id, version: ${version}})
   OPTIONAL MATCH (before:ExaminationVersion {store: $store, id: e.id, version: e.version - 1})
     WHERE found IS NULL AND ${isNewest}
   WITH coalesce(found, before) AS v WHERE v IS NOT NULL`;

/** One version, or the newest. What a write of several transactions has not made visible yet has no `Examination`. */
export async function findExamination(
  ask: Database["read"] | Run,
  id: ExaminationId,
  version?: number,
): Promise<Examination | undefined> {
  const [row] = await ask<{ found: VersionNode }>(
    `MATCH (e:Examination {store: $store, id: $id})
     ${matchVersion("coalesce($version, e.version)", "$version IS NULL")}
     RETURN ${VERSION_NODE} AS found`,
    { id, version: version ?? null },
  );
  return row && examinationOf(row.found);
}

/** The newest versions that are not deleted and not left out, last changed first. */
export async function listExaminations(
  database: Database,
  page: PageAsk,
  leftOut?: LeftOut,
): Promise<Page<Examination>> {
  const first = checkFirst(page.first);
  const [changedAt = "", id = ""] = page.after?.split("~") ?? [];
  const [row] = await database.read<{ total: number; rows: readonly VersionNode[] }>(
    `CALL () {
       MATCH (e:Examination {store: $store}) WHERE NOT e.deleted AND ${isAdmitted(leftOut)}
       RETURN count(e) AS total
     }
     CALL () {
       MATCH (e:Examination {store: $store})
       WHERE NOT e.deleted AND ${isAdmitted(leftOut)}
         AND ($fromTop OR e.changedAt < $changedAt OR e.changedAt = $changedAt AND e.id > $id)
       WITH e ORDER BY e.changedAt DESC, e.id LIMIT $limit
       ${matchVersion("e.version", "true")}
       WITH v ORDER BY v.changedAt DESC, v.id
       RETURN collect(${VERSION_NODE}) AS rows
     }
     RETURN total, rows`,
    { fromTop: page.after === undefined, changedAt, id, limit: first + 1, leftOut: leftOut ?? null },
  );
  const { total, rows } = row ?? { total: 0, rows: [] };
  const shown = rows.slice(0, first).map(examinationOf);
  return {
    rows: shown,
    cursors: shown.map((each) => `${each.changedAt}~${each.id}`),
    hasMore: rows.length > first,
    total,
  };
}

/** The condition that leaves examinations out, by `$leftOut`. */
function isAdmitted(leftOut: LeftOut | undefined): string {
  if (leftOut === undefined) return "true";
  const has = (key: string) =>
    `EXISTS { (:CardKey {store: $store, kind: $leftOut.kind, name: $leftOut.${key}.name, value: $leftOut.${key}.value, id: e.id}) }`;
  return `NOT (${has("by")}${leftOut.unless === undefined ? "" : ` AND NOT ${has("unless")}`})`;
}
