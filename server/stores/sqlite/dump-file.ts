import { keepInOrder } from "../../chain/change-text.ts";
import { sealDump } from "../../chain/seal-dump.ts";
import type { DumpedThing, DumpRecord } from "../../domain/dump.ts";
import { isProblem } from "../../domain/problem.ts";
import type { Revision } from "../../domain/revision.ts";
import { StoreFailed } from "../../ports/store-failed.ts";
import { type CardRow, cardOf } from "./cards.ts";
import { asStoreFailed, type Database } from "./database.ts";
import { EXAMINATION_COLUMNS, examinationOf } from "./examinations.ts";
import { openFile } from "./open-file.ts";
import { parseStored } from "./parse-stored.ts";
import { REVISION_COLUMNS, revisionOf } from "./revisions.ts";
import { allWrites } from "./writes.ts";

/** Reads a dump over a connection of its own, so that writes made meanwhile do not show in it. */
export async function* dumpFile(path: string): AsyncGenerator<DumpRecord> {
  const database = await openFile(path, { readOnly: true, patience: 1000 });
  if (isProblem(database)) throw new StoreFailed(database, undefined);
  try {
    database.raw.exec("BEGIN");
    // The moment of the dump is that of its first read.
    database.get("SELECT max(number) FROM revision");
    yield* sealDump(readRecords(database));
  } catch (failure) {
    throw asStoreFailed(failure);
  } finally {
    await database.close();
  }
}

function* readRecords(database: Database): Generator<DumpedThing> {
  const revisions = database.raw.prepare(`SELECT ${REVISION_COLUMNS}, change FROM revision ORDER BY number`);
  for (const row of revisions.iterate() as unknown as Iterable<Revision & { readonly change: string }>)
    yield { kind: "revision", revision: revisionOf(row), change: keepInOrder(parseStored(row.change)) };
  const versions = database.raw.prepare(
    `SELECT ${EXAMINATION_COLUMNS} FROM examination ORDER BY id, version`,
  );
  for (const row of versions.iterate() as unknown as Iterable<Parameters<typeof examinationOf>[0]>)
    yield { kind: "examination", examination: examinationOf(row) };
  const cards = database.raw.prepare("SELECT * FROM card ORDER BY kind, id");
  for (const row of cards.iterate() as unknown as Iterable<CardRow>)
    yield { kind: "card", card: cardOf(row) };
  for (const write of allWrites(database)) yield { kind: "write", write };
}
