import { DatabaseSync } from "node:sqlite";
import { findBrokenLink } from "../../chain/find-broken-link.ts";
import { storeTampered } from "../../chain/refusals.ts";
import type { Change } from "../../domain/change.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import { NO_HASH, type Revision } from "../../domain/revision.ts";
import type { Progress } from "../../ports/progress.ts";
import { StoreFailed } from "../../ports/store-failed.ts";
import { type Database, wrapDatabase } from "./database.ts";
import { storeCorrupt } from "./find-medium-problem.ts";
import { findWrongLine } from "./ledger.ts";
import { MIGRATIONS } from "./migrations.ts";
import { openFile } from "./open-file.ts";
import { REVISION_COLUMNS, revisionOf } from "./revisions.ts";
import { writeRevision } from "./write-rows.ts";

/** Tables that follow from the changes, with the columns that name a row. */
const FOLLOWING: readonly { readonly table: string; readonly key: string }[] = [
  { table: "term", key: "row" },
  { table: "claim", key: "row" },
  { table: "source", key: "row" },
  { table: "statement", key: "subject, row" },
  { table: "lead", key: "subject, target, row" },
  { table: "exception", key: "of, row" },
  { table: "naming", key: "kind, named, by, row" },
  { table: "tally", key: "what, revision" },
];

type Verified = { readonly revisions: number; readonly head: string } | Problem;

/**
 * Makes every change again in an empty database and compares: the hashes, then all rows that follow from the changes.
 * Refuses with the first revision that does not check. The file is read over a connection of its own: one that is open
 * keeps pages in memory and would not see what became of them on the disk.
 */
export async function verifyFile(path: string, progress: Progress = () => {}): Promise<Verified> {
  const database = await openFile(path, { readOnly: true, patience: 2000 });
  if (isProblem(database)) return database;
  try {
    return await database.read(() => verifyContent(database, progress));
  } catch (failure) {
    if (failure instanceof StoreFailed) return failure.problem;
    throw failure;
  } finally {
    await database.close();
  }
}

function verifyContent(database: Database, progress: Progress): Verified {
  progress(() => "Reading the file");
  const sound = database.get<{ integrity_check: string }>("PRAGMA integrity_check(1)")?.integrity_check;
  if (sound !== "ok") return storeCorrupt(`integrity check: ${sound}`);
  // A database without a name lies in a file that goes when it is closed: a large history need not fit into memory.
  const replay = wrapDatabase(new DatabaseSync(""));
  try {
    for (const migration of MIGRATIONS) replay.raw.exec(migration);
    const head = replayChanges(database, replay, progress);
    if (head !== undefined && "problem" in head) return head;
    const wrong =
      findDifferences(database, replay, progress) ??
      findBrokenVersion(database) ??
      findWrongLine(database, head?.number ?? 0);
    return wrong ?? { revisions: head?.number ?? 0, head: head?.hash ?? NO_HASH };
  } finally {
    replay.raw.close();
  }
}

function findDifferences(database: Database, replay: Database, progress: Progress): Problem | undefined {
  for (const [done, { table, key }] of FOLLOWING.entries()) {
    progress(() => `Comparing the rows of ${table}, table ${done + 1} of ${FOLLOWING.length}`);
    const difference = findDifference(database, replay, table, key);
    if (difference !== undefined) return difference;
  }
  return undefined;
}

function replayChanges(
  database: Database,
  replay: Database,
  progress: Progress,
): Revision | Problem | undefined {
  const { total } = database.get<{ total: number }>("SELECT count(*) AS total FROM revision") ?? { total: 0 };
  let newest: Revision | undefined;
  replay.raw.exec("BEGIN");
  const rows = database.raw.prepare(`SELECT ${REVISION_COLUMNS}, change FROM revision ORDER BY number`);
  for (const row of rows.iterate() as unknown as Iterable<Revision & { readonly change: string }>) {
    const number = (newest?.number ?? 0) + 1;
    progress(() => `Making the changes again: revision ${number} of ${total}`);
    const change = findChange(row.change);
    if (change === undefined) return storeTampered(number, "its change cannot be read");
    const revision = revisionOf(row);
    const broken = findBrokenLink(revision, change, newest);
    if (broken !== undefined) return storeTampered(number, broken);
    writeRevision(replay, revision, change);
    newest = revision;
  }
  replay.raw.exec("COMMIT");
  return newest;
}

function findChange(text: string): Change | undefined {
  try {
    return JSON.parse(text) as Change;
  } catch {
    return undefined;
  }
}

type Row = Readonly<Record<string, unknown>>;

/** The first row of a table that is not as the changes made it. */
function findDifference(
  database: Database,
  replay: Database,
  table: string,
  key: string,
): Problem | undefined {
  const rowsOf = (from: Database): Iterator<unknown> =>
    from.raw.prepare(`SELECT * FROM ${table} ORDER BY ${key}`).iterate();
  const kept = rowsOf(database);
  const made = rowsOf(replay);
  for (;;) {
    const is = nextRow(kept);
    const should = nextRow(made);
    if (is === undefined && should === undefined) return undefined;
    if (JSON.stringify(is) === JSON.stringify(should)) continue;
    const since = Math.min(
      ...[is, should].flatMap((row) => (row ? [Number(row["since"] ?? row["revision"])] : [])),
    );
    const named = (is ?? should)?.["id"];
    return storeTampered(
      since,
      `a row of ${table}${named === undefined ? "" : ` (${named})`} is not as the changes made it`,
    );
  }
}

function nextRow(rows: Iterator<unknown>): Row | undefined {
  const { done, value } = rows.next();
  return done ? undefined : (value as Row);
}

/** Versions run from 1 without a gap, and exactly the last is the newest. */
function findBrokenVersion(database: Database): Problem | undefined {
  const row = database.get<{ id: string }>(
    `SELECT id FROM examination GROUP BY id
      HAVING min(version) <> 1 OR max(version) <> count(*) OR sum(newest) <> 1
          OR max(version * newest) <> max(version) LIMIT 1`,
  );
  return row && storeCorrupt(`the versions of examination ${row.id} have a gap`);
}
