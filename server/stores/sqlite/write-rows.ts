import { type ChangeTexts, textsOf } from "../../chain/change-text.ts";
import type { Change, Edit } from "../../domain/change.ts";
import type { Revision } from "../../domain/revision.ts";
import { tallyAfter } from "../../domain/tally.ts";
import { addedRows, type NextRows } from "./added-rows.ts";
import type { Database } from "./database.ts";
import { insertRows } from "./insert-rows.ts";
import { STILL_STANDS } from "./migrations.ts";
import { keepTally } from "./tally.ts";

/** Writes a revision with its change, ends the rows it replaces and adds the new ones. Inside a write. */
export function writeRevision(
  database: Database,
  revision: Revision,
  change: Change,
  texts: ChangeTexts = textsOf(change),
): void {
  putRevision(database, revision, texts.change);
  const { number } = revision;
  for (const { kind, before } of change) if (before) endRow(database, kind, before.id, number);
  insertRows(database, addedRows(change, texts.after, nextRows(database)), number);
  keepTally(database, number, tallyAfter({}, change), change.length);
}

/** Writes a revision itself; `text` is the canonical JSON of its change. Inside a write. */
export function putRevision(database: Database, revision: Revision, text: string): void {
  const { number, at, by, message, content, previous, hash } = revision;
  database.put(
    `INSERT INTO revision (number, at, by, message, content, previous, hash, change) VALUES (?, ?, ?, ?, ?, ?, ?, ?)`,
    [number, at, by, message, content, previous, hash, text],
  );
}

const nextRows = (database: Database): NextRows => ({
  term: nextRow(database, "term"),
  claim: nextRow(database, "claim"),
  source: nextRow(database, "source"),
});

const nextRow = (database: Database, kind: Edit["kind"]): number =>
  (database.get<{ last: number | null }>(`SELECT max(row) AS last FROM ${kind}`)?.last ?? 0) + 1;

function endRow(database: Database, kind: Edit["kind"], id: string, until: number): void {
  const stands = { id, stands: STILL_STANDS, until };
  if (kind === "claim") {
    const row = `(SELECT row FROM claim WHERE id = :id AND until = :stands)`;
    database.run(
      `UPDATE statement SET until = :until
        WHERE subject = (SELECT subject FROM claim WHERE id = :id AND until = :stands) AND row = ${row}`,
      stands,
    );
    database.run(
      `UPDATE lead SET until = :until
        WHERE subject = (SELECT subject FROM claim WHERE id = :id AND until = :stands) AND row = ${row}`,
      stands,
    );
    database.run(
      `UPDATE exception SET until = :until
        WHERE of = (SELECT body ->> 'of' FROM claim WHERE id = :id AND until = :stands) AND row = ${row}`,
      stands,
    );
  }
  database.run(`UPDATE ${kind} SET until = :until WHERE id = :id AND until = :stands`, stands);
}
