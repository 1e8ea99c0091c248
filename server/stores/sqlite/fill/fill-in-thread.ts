import { DatabaseSync } from "node:sqlite";
import { parentPort, workerData } from "node:worker_threads";
import { storeNotEmpty } from "../../../chain/refusals.ts";
import { isProblem, type Problem } from "../../../domain/problem.ts";
import { wrapDatabase } from "../database.ts";
import { execInTime } from "../exec-in-time.ts";
import { findMediumProblem } from "../find-medium-problem.ts";
import { insertRows } from "../insert-rows.ts";
import { TO_WRITE_MUCH } from "../open-file.ts";
import { shrinkLog } from "../shrink-log.ts";
import { keepTally } from "../tally.ts";
import { putRevision } from "../write-rows.ts";
import { newestWrite, noteWrite } from "../writes.ts";
import type { FillAnswer, FillAsked, FilledRevision, FillMessage } from "./fill-message.ts";

/**
 * Runs in a worker thread: writes whole revisions to an empty file as one transaction, while another thread makes the next.
 * Whoever reads the file meanwhile sees it empty.
 */
const { path, patience, mostPages } = workerData as FillAsked;
const database = wrapDatabase(new DatabaseSync(path, { timeout: 0 }));

function write({ revision, text, rows, more, edits }: FilledRevision): Problem | undefined {
  const { number, hash } = revision;
  putRevision(database, revision, text);
  insertRows(database, rows, number);
  keepTally(database, number, more, edits);
  const noted = noteWrite(database, { revision: number }, { revision: hash });
  return isProblem(noted) ? noted : undefined;
}

async function keepAll(): Promise<undefined> {
  database.raw.exec("COMMIT");
  shrinkLog(database);
  await database.close();
}

/** A failure of the medium is a refusal; what else goes wrong ends the thread, and the one that started it sees that. */
function refusalOf(failure: unknown): Problem {
  const refusal = findMediumProblem(failure);
  if (refusal === undefined) throw failure;
  return refusal;
}

const say = (refusal: Problem | undefined): void =>
  parentPort?.postMessage((refusal === undefined ? {} : { refusal }) satisfies FillAnswer);

async function begin(): Promise<Problem | undefined> {
  database.raw.exec(`${TO_WRITE_MUCH}; PRAGMA synchronous = full`);
  if (mostPages !== undefined) database.raw.exec(`PRAGMA max_page_count = ${mostPages}`);
  await execInTime(database.raw, "BEGIN IMMEDIATE", patience);
  return newestWrite(database) > 0 ? storeNotEmpty() : undefined;
}

/** What the last message came to. After a refusal nothing is written any more: SQLite may have ended the transaction. */
let last = begin().catch(refusalOf);
last.then(say);
parentPort?.on("message", (message: FillMessage) => {
  last = last.then((refused) => refused ?? (message === "end" ? keepAll() : write(message))).catch(refusalOf);
  const said = last.then(say);
  if (message === "end") said.then(() => parentPort?.close());
});
