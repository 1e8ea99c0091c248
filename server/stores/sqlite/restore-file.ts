import { DatabaseSync } from "node:sqlite";
import { textsOf } from "../../chain/change-text.ts";
import { checkCommit } from "../../chain/check-commit.ts";
import { checkDump } from "../../chain/check-dump.ts";
import { changeDoesNotFit, storeNotEmpty } from "../../chain/refusals.ts";
import type { DumpRecord } from "../../domain/dump.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import { addCard } from "./cards.ts";
import { type Database, wrapDatabase } from "./database.ts";
import { addVersion } from "./examinations.ts";
import { execInTime } from "./exec-in-time.ts";
import { findMediumProblem } from "./find-medium-problem.ts";
import { TO_WRITE_MUCH } from "./open-file.ts";
import { shrinkLog } from "./shrink-log.ts";
import { standingView, type TermsRead } from "./standing-view.ts";
import { writeRevision } from "./write-rows.ts";
import { addWrite, newestWrite } from "./writes.ts";

type Restored = { readonly records: number } | Problem;

/** Terms kept while changes are checked. */
const MOST_TERMS = 200_000;

/**
 * Makes every change of a dump anew while it is read, and puts its examinations in, as one transaction over a connection
 * of its own: what reads the file meanwhile sees it empty, and no more of the dump is in memory than one revision.
 */
export async function restoreFile(
  path: string,
  records: AsyncIterable<DumpRecord> | Iterable<DumpRecord>,
  patience: number,
): Promise<Restored> {
  const database = wrapDatabase(new DatabaseSync(path, { timeout: 0 }));
  try {
    database.raw.exec(`${TO_WRITE_MUCH}; PRAGMA synchronous = full`);
    await execInTime(database.raw, "BEGIN IMMEDIATE", patience);
    const restored = newestWrite(database) > 0 ? storeNotEmpty() : await takeRecords(database, records);
    if (isProblem(restored)) return restored;
    database.raw.exec("COMMIT");
    shrinkLog(database);
    return restored;
  } catch (failure) {
    const refusal = findMediumProblem(failure);
    if (refusal === undefined) throw failure;
    return refusal;
  } finally {
    if (database.raw.isTransaction) database.raw.exec("ROLLBACK");
    await database.close();
  }
}

async function takeRecords(
  database: Database,
  records: AsyncIterable<DumpRecord> | Iterable<DumpRecord>,
): Promise<Restored> {
  const check = checkDump();
  const terms: TermsRead = new Map();
  let revisions = 0;
  for await (const record of records) {
    const refusal = check.take(record);
    if (refusal !== undefined) return refusal;
    if (record.kind === "revision") {
      const { revision, change } = record;
      const unfit = checkCommit(standingView(database, change, terms), revisions, change, undefined);
      if (unfit !== undefined) return changeDoesNotFit(revision.number, unfit);
      writeRevision(database, revision, change, textsOf(change));
      for (const { kind, before, after } of change)
        if (kind === "term") terms.delete((after ?? before)?.id ?? "");
      if (terms.size > MOST_TERMS) terms.clear();
      revisions++;
    } else if (record.kind === "examination") addVersion(database, record.examination);
    else if (record.kind === "card") addCard(database, record.card);
  }
  const end = check.end();
  if (isProblem(end)) return end;
  for (const written of end.writes) addWrite(database, written);
  return { records: end.records };
}
