import { deepFreeze } from "../../domain/deep-freeze.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import { checkCount } from "../../ports/check-count.ts";
import type { Written } from "../../ports/store.ts";
import type { Database } from "./database.ts";

interface WriteNode {
  readonly sequence: number;
  readonly revision: number | null;
  readonly examination: ExaminationId | null;
  readonly version: number | null;
  readonly restored: boolean | null;
}

/** The number of the newest write; 0 before the first. */
export async function newestWrite(database: Database): Promise<number> {
  const [row] = await database.read<{ newest: number }>(
    "MATCH (s:Store {name: $store}) RETURN s.sequence AS newest",
  );
  return row?.newest ?? 0;
}

/** The writes after that number, oldest first. */
export async function writesAfter(
  database: Database,
  sequence: number,
  first: number,
): Promise<readonly Written[]> {
  const rows = await database.read<{ written: WriteNode }>(
    `MATCH (s:Store {name: $store})
     MATCH (w:Write {store: $store}) WHERE $sequence < w.sequence <= s.sequence
     RETURN w {.sequence, .revision, .examination, .version, .restored} AS written
     ORDER BY w.sequence LIMIT $first`,
    { sequence, first: checkCount(first) },
  );
  return rows.map(({ written }) => writtenOf(written));
}

const writtenOf = ({ sequence, revision, examination, version, restored }: WriteNode): Written =>
  deepFreeze({
    sequence,
    ...(revision === null ? {} : { revision }),
    ...(examination === null || version === null ? {} : { examination: { id: examination, version } }),
    ...(restored === true ? { restored } : {}),
  });
