import { deepFreeze } from "../../domain/deep-freeze.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import type { Problem } from "../../domain/problem.ts";
import { checkCount } from "../../ports/check-count.ts";
import type { Written } from "../../ports/store.ts";
import type { Database } from "./database.ts";
import { storeCorrupt } from "./find-medium-problem.ts";

interface WriteRow {
  readonly sequence: number;
  readonly revision: number | null;
  readonly examination: string | null;
  readonly version: number | null;
  readonly restored: number;
}

/** The number of the newest write; 0 before the first. */
export const newestWrite = (database: Database): number =>
  database.get<{ newest: number | null }>("SELECT max(sequence) AS newest FROM write")?.newest ?? 0;

/** Gives a write its number, and tells it. Inside that write. */
export function noteWrite(
  database: Database,
  { revision, examination, restored }: Omit<Written, "sequence">,
): number {
  const sequence = newestWrite(database) + 1;
  database.run(
    `INSERT INTO write (sequence, revision, examination, version, restored)
     VALUES (:sequence, :revision, :examination, :version, :restored)`,
    {
      sequence,
      revision: revision ?? null,
      examination: examination?.id ?? null,
      version: examination?.version ?? null,
      restored: Number(restored === true),
    },
  );
  return sequence;
}

/** The writes after that number, oldest first. */
export const writesAfter = (database: Database, sequence: number, first: number): readonly Written[] =>
  database
    .all<WriteRow>("SELECT * FROM write WHERE sequence > :sequence ORDER BY sequence LIMIT :first", {
      ...{ sequence, first: checkCount(first) },
    })
    .map(writtenOf);

const writtenOf = ({ sequence, revision, examination, version, restored }: WriteRow): Written =>
  deepFreeze({
    sequence,
    ...(revision === null ? {} : { revision }),
    ...(examination === null || version === null
      ? {}
      : { examination: { id: examination as ExaminationId, version } }),
    ...(restored === 1 ? { restored: true as const } : {}),
  });

/** What none of the rows may be: each finds something only where the list is not what was written. */
const BROKEN: readonly string[] = [
  "SELECT 1 FROM (SELECT count(*) AS count, max(sequence) AS last FROM write) WHERE count <> last",
  "SELECT 1 FROM write WHERE restored = 1 AND sequence > 1",
  // Revisions came one after the other, from the one that a restore ended with to the newest.
  `SELECT 1 FROM (SELECT revision, lag(revision, 1, 0) OVER (ORDER BY sequence) AS before, restored FROM write WHERE revision IS NOT NULL)
    WHERE revision <> before + 1 AND restored = 0`,
  "SELECT 1 WHERE (SELECT max(number) FROM revision) IS NOT (SELECT max(revision) FROM write)",
  // Each version came with one write, or with a restore.
  `SELECT 1 FROM write LEFT JOIN examination ON id = examination AND examination.version = write.version
    WHERE examination IS NOT NULL GROUP BY examination, write.version HAVING count(id) <> 1`,
  `SELECT 1 FROM examination LEFT JOIN write ON examination = id AND write.version = examination.version
    GROUP BY id HAVING count(sequence) < count(*) AND NOT EXISTS (SELECT 1 FROM write WHERE restored = 1)`,
];

/** Says if the list of writes is not what was written. */
export const findBrokenWrite = (database: Database): Problem | undefined =>
  BROKEN.some((sql) => database.get(`${sql} LIMIT 1`) !== undefined)
    ? storeCorrupt("the list of writes is not what was written")
    : undefined;
