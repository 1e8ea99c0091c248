import { checkLedger } from "../../chain/check-ledger.ts";
import { hashOfVersion, linkWritten, type MadeByWrite, noteOf } from "../../chain/link-written.ts";
import { ledgerTampered } from "../../chain/refusals.ts";
import type { Problem } from "../../domain/problem.ts";
import type { WriteNote, Written } from "../../domain/written.ts";
import { type CardRow, cardOf } from "./cards.ts";
import type { Database } from "./database.ts";
import { EXAMINATION_COLUMNS, examinationOf, findExamination } from "./examinations.ts";
import { findRevision } from "./revisions.ts";
import { addWrite, allWrites } from "./writes.ts";

/** Recomputes the chain of the ledger, and holds what it tells of against what is there. */
export function findWrongLine(database: Database, revisions: number): Problem | undefined {
  const ledger = checkLedger();
  for (const written of allWrites(database)) {
    const broken = ledger.take(written, madeBy(database, written));
    if (broken !== undefined) return ledgerTampered(broken);
  }
  const cards = database.raw.prepare("SELECT * FROM card ORDER BY kind, id");
  for (const row of cards.iterate() as unknown as Iterable<CardRow>) {
    const broken = ledger.takeCard(cardOf(row));
    if (broken !== undefined) return ledgerTampered(broken);
  }
  const versions = database.get<{ count: number }>("SELECT count(*) AS count FROM examination")?.count ?? 0;
  const missing = ledger.end({ revisions, versions }) ?? findWrongKey(database);
  return missing === undefined ? undefined : ledgerTampered(missing);
}

/** What cards are found by follows from them. */
function findWrongKey(database: Database): string | undefined {
  const row = database.get<{ kind: string; id: string }>(
    `WITH due AS (
       SELECT DISTINCT card.kind, name.key AS name, value.value AS value, card.id
         FROM card, json_each(card.keys) AS name, json_each(name.value) AS value)
     SELECT kind, id FROM (
       SELECT * FROM (SELECT kind, name, value, id FROM card_key EXCEPT SELECT * FROM due)
       UNION ALL SELECT * FROM (SELECT * FROM due EXCEPT SELECT kind, name, value, id FROM card_key)) LIMIT 1`,
  );
  return row && `the card ${row.kind} ${row.id} is not found by its keys`;
}

/** Chains the lines of a file from before there was a chain. Inside a write. */
export function chainOldWrites(database: Database): void {
  const old = database.all<{ sequence: number }>("SELECT sequence FROM write WHERE hash = '' LIMIT 1");
  if (old.length === 0) return;
  let newest: Written | undefined;
  const lines = [...allWrites(database)].map((written) => {
    newest = linkWritten(noteOf(written), madeBy(database, written), newest);
    return newest;
  });
  database.run("DELETE FROM write");
  for (const line of lines) addWrite(database, line);
}

/** What the file holds of what a write says it made. */
function madeBy(database: Database, { revision, examination, restored }: WriteNote): MadeByWrite {
  const version = examination && findExamination(database, examination.id, examination.version);
  return {
    revision: revision === undefined ? undefined : findRevision(database, revision)?.hash,
    examination: version && hashOfVersion(version),
    examinations: restored && restoredVersions(database),
  };
}

/** Hashes of the versions that no write names, which came with a restore. */
const restoredVersions = (database: Database): readonly string[] =>
  database
    .all<Parameters<typeof examinationOf>[0]>(
      `SELECT ${EXAMINATION_COLUMNS} FROM examination AS kept
        WHERE NOT EXISTS (SELECT 1 FROM write WHERE write.examination = kept.id AND write.version = kept.version)
        ORDER BY id, version`,
    )
    .map((row) => hashOfVersion(examinationOf(row)));
