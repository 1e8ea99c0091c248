import { linkWritten, type MadeByWrite } from "../../chain/link-written.ts";
import { canonicalJson } from "../../domain/canonical-json.ts";
import type { Deed } from "../../domain/deed.ts";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import type { WriteNote, Written, WrittenCard } from "../../domain/written.ts";
import { checkCount } from "../../ports/check-count.ts";
import type { Along } from "../../ports/store.ts";
import { putCards } from "./cards.ts";
import type { Database } from "./database.ts";
import { parseStored } from "./parse-stored.ts";

interface WriteRow {
  readonly sequence: number;
  readonly revision: number | null;
  readonly examination: string | null;
  readonly version: number | null;
  readonly restored: number;
  readonly cards: string | null;
  readonly deed: string | null;
  readonly content: string;
  readonly previous: string;
  readonly hash: string;
}

/** The number of the newest write; 0 before the first. */
export const newestWrite = (database: Database): number =>
  database.get<{ newest: number | null }>("SELECT max(sequence) AS newest FROM write")?.newest ?? 0;

/** Writes what goes along with a write, and its line in the ledger. Inside that write. */
export function noteWrite(
  database: Database,
  note: WriteNote,
  made: MadeByWrite,
  { deed, cards = [] }: Along = {},
): Written | Problem {
  const written = putCards(database, cards);
  if (isProblem(written)) return written;
  const newest = database.get<{ sequence: number; hash: string }>(
    "SELECT sequence, hash FROM write ORDER BY sequence DESC LIMIT 1",
  );
  const linked = linkWritten({ ...note, cards: written, deed }, made, newest);
  addWrite(database, linked);
  return deepFreeze(linked);
}

/** Adds a line to the ledger as it is. Inside a write. */
export function addWrite(database: Database, written: Written): void {
  const { sequence, revision, examination, restored = false, cards, deed, content, previous, hash } = written;
  database.run(
    `INSERT INTO write (sequence, revision, examination, version, restored, cards, deed, content, previous, hash)
     VALUES (:sequence, :revision, :examination, :version, :restored, :cards, :deed, :content, :previous, :hash)`,
    {
      ...{ sequence, content, previous, hash },
      revision: revision ?? null,
      examination: examination?.id ?? null,
      version: examination?.version ?? null,
      restored: Number(restored),
      cards: cards === undefined ? null : canonicalJson(cards),
      deed: deed === undefined ? null : canonicalJson(deed),
    },
  );
}

/** The writes after that number, oldest first. */
export const writesAfter = (database: Database, sequence: number, first: number): readonly Written[] =>
  database
    .all<WriteRow>("SELECT * FROM write WHERE sequence > :sequence ORDER BY sequence LIMIT :first", {
      ...{ sequence, first: checkCount(first) },
    })
    .map(writtenOf);

/** The whole ledger, oldest first. */
export function* allWrites(database: Database): Generator<Written> {
  const rows = database.raw.prepare("SELECT * FROM write ORDER BY sequence");
  for (const row of rows.iterate() as unknown as Iterable<WriteRow>) yield writtenOf(row);
}

const writtenOf = (row: WriteRow): Written => {
  const { sequence, revision, examination, version, restored, cards, deed, content, previous, hash } = row;
  return deepFreeze({
    sequence,
    ...(revision === null ? {} : { revision }),
    ...(examination === null || version === null
      ? {}
      : { examination: { id: examination as ExaminationId, version } }),
    ...(restored === 1 ? { restored: true as const } : {}),
    ...(cards === null ? {} : { cards: parseStored<readonly WrittenCard[]>(cards) }),
    ...(deed === null ? {} : { deed: parseStored<Deed>(deed) }),
    ...{ content, previous, hash },
  });
};
