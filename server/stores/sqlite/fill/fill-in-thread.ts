import { DatabaseSync } from "node:sqlite";
import { parentPort, workerData } from "node:worker_threads";
import { editText, joinEdits } from "../../../chain/change-text.ts";
import { linkRevision } from "../../../chain/link-revision.ts";
import { storeNotEmpty } from "../../../chain/refusals.ts";
import { isProblem, type Problem } from "../../../domain/problem.ts";
import type { Revision } from "../../../domain/revision.ts";
import { wrapDatabase } from "../database.ts";
import { execInTime } from "../exec-in-time.ts";
import { findMediumProblem } from "../find-medium-problem.ts";
import { FORMS, insertRows, type ManyRows, ROW_FORMS } from "../insert-rows.ts";
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

let newest: Revision | undefined;

function write({ authorship, kinds, bodies, rows, more }: FilledRevision): Problem | undefined {
  const text = joinEdits(kinds.map((kind, at) => editText(kind, bodies[at])));
  newest = linkRevision(text, authorship, newest);
  const { number, hash } = newest;
  putRevision(database, newest, text);
  insertRows(database, withBodies(rows, bodies), number);
  keepTally(database, number, more, kinds.length);
  const noted = noteWrite(database, { revision: number }, { revision: hash });
  return isProblem(noted) ? noted : undefined;
}

/** The rows that things themselves are have their body in the last column. */
const withBodies = (rows: ManyRows, bodies: FilledRevision["bodies"]): ManyRows =>
  ROW_FORMS.map((form, at) => {
    const values = rows[at] ?? [];
    if (form !== FORMS.term && form !== FORMS.claim && form !== FORMS.source) return values;
    const isBody = (place: number): boolean => place % form.width === form.width - 1;
    return values.map((value, place) => (isBody(place) ? (bodies[Number(value)] ?? "") : value));
  });

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
