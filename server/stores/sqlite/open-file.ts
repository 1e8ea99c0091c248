import { existsSync, mkdirSync } from "node:fs";
import { dirname } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { isProblem, type Problem, problem } from "../../domain/problem.ts";
import { StoreFailed } from "../../ports/store-failed.ts";
import { type Database, wrapDatabase } from "./database.ts";
import { execInTime } from "./exec-in-time.ts";
import { findMediumProblem, isBusy, storeCorrupt } from "./find-medium-problem.ts";
import { chainOldWrites } from "./ledger.ts";
import { APPLICATION_ID, MIGRATIONS } from "./migrations.ts";
import { type Gate, openGate } from "./open-gate.ts";
import { tryInTime } from "./try-in-time.ts";

/** Below this, two connections that write and checkpoint at once can damage a file (SQLite's page on WAL). */
const OLDEST_SQLITE = [3, 51, 3];

/** Memory for pages of the file, in KiB: walks read the same few pages again and again. */
export const PAGES_KEPT_KIB = 65_536;

/**
 * Said to a connection before it writes much: more memory for pages, as rows of all tables are put in between others, and a
 * log that is taken into the file less often, as the next revision alters the same pages again.
 */
export const TO_WRITE_MUCH = "PRAGMA cache_size = -262144; PRAGMA wal_autocheckpoint = 16000";

export interface OpenOptions {
  /** For a look at a store that a running server may hold: nothing is made, upgraded or written. */
  readonly readOnly: boolean;
  /** How long to wait for another program that writes, in milliseconds. */
  readonly patience: number;
}

/** Opens the file, makes or upgrades its tables, and looks it through; all that can be wrong with it is a problem. */
export async function openFile(path: string, options: OpenOptions): Promise<Database | Problem> {
  if (options.readOnly && !existsSync(path)) return noSuchFile(path);
  let gate: Gate | undefined;
  try {
    if (options.readOnly) return await open(path, options, () => {});
    mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
    const opened = openGate(path);
    gate = opened;
    const database =
      (await tryInTime(options.patience, () => (opened.enter("together") ? "in" : undefined))) === undefined
        ? isServedOtherwise(path)
        : await open(path, options, opened.close, opened);
    if (isProblem(database)) gate.close();
    return database;
  } catch (failure) {
    gate?.close();
    const refusal = findMediumProblem(failure) ?? findFolderProblem(failure, path);
    if (refusal === undefined) throw failure;
    return refusal;
  }
}

async function open(
  path: string,
  { readOnly, patience }: OpenOptions,
  release: () => void,
  gate?: Gate,
): Promise<Database | Problem> {
  const raw = new DatabaseSync(path, { readOnly, timeout: 0, enableForeignKeyConstraints: true });
  try {
    const database = wrapDatabase(raw, { patience, release });
    // Also this reads the file, which nobody may while the first program mends its log or the last one closes it.
    await execInTime(raw, `PRAGMA cache_size = ${-PAGES_KEPT_KIB}`, patience);
    const refusal =
      checkLibrary(database) ??
      (await database.read(() => checkFile(database, path))) ??
      (gate === undefined
        ? await database.read(() => checkVersion(database))
        : await prepareFile(database, path, gate, patience));
    if (refusal === undefined) return database;
    raw.close();
    return refusal;
  } catch (failure) {
    raw.close();
    throw failure instanceof StoreFailed ? failure.cause : failure;
  }
}

function checkLibrary(database: Database): Problem | undefined {
  const version = database.get<{ version: string }>("SELECT sqlite_version() AS version")?.version ?? "";
  if (!isOlder(version.split(".").map(Number), OLDEST_SQLITE)) return undefined;
  return problem(
    "OTHER_VERSION",
    `SQLite ${version} can damage a store; this program needs ${OLDEST_SQLITE.join(".")} or newer, which comes with Node 24.15.`,
  );
}

/** Tells whether one version, as numbers, comes before another. */
export function isOlder(version: readonly number[], than: readonly number[]): boolean {
  for (const [place, needed] of than.entries()) {
    const has = version[place] ?? 0;
    if (has !== needed) return has < needed;
  }
  return false;
}

/** The file must be empty, or a store of this program, of no later version, and pass SQLite's quick check. */
function checkFile(database: Database, path: string): Problem | undefined {
  const sound = database.get<{ quick_check: string }>("PRAGMA quick_check(1)")?.quick_check;
  if (sound !== "ok") return storeCorrupt(`quick check: ${sound}`);
  const { application_id: application } = database.get("PRAGMA application_id") ?? {};
  const tables = database.get<{ count: number }>("SELECT count(*) AS count FROM sqlite_schema")?.count ?? 0;
  if (application !== APPLICATION_ID && tables > 0)
    return problem(
      "WRONG_FORMAT",
      `${path} is a database of another program; nothing was touched. Choose another data folder (SCRIBELINE_DATA).`,
    );
  return refuseLater(database);
}

function refuseLater(database: Database): Problem | undefined {
  const version = versionOf(database);
  if (version <= MIGRATIONS.length) return undefined;
  return problem(
    "OTHER_VERSION",
    `The store is of version ${version}, and this program knows versions up to ${MIGRATIONS.length}; use the newer program that wrote it.`,
  );
}

const versionOf = (database: Database): number =>
  database.get<{ user_version: number }>("PRAGMA user_version")?.user_version ?? 0;

function checkVersion(database: Database): Problem | undefined {
  if (versionOf(database) === MIGRATIONS.length) return undefined;
  return problem(
    "OTHER_VERSION",
    "The store is empty or of an older version; start the server once to bring it up to date.",
  );
}

/** Brings the file to this version, once however many programs open it: alone, so that none of an earlier version writes on. */
async function prepareFile(
  database: Database,
  path: string,
  gate: Gate,
  patience: number,
): Promise<Problem | undefined> {
  const isReady = (): boolean =>
    unlessBusy(() => versionOf(database) === MIGRATIONS.length && isLogged(database)) ?? false;
  const done = await tryInTime(patience, (): "ready" | "alone" | undefined => {
    if (gate.enter("together") && isReady()) return "ready";
    return gate.enter("alone") ? "alone" : undefined;
  });
  if (done === undefined) return isServedOtherwise(path);
  database.raw.exec("PRAGMA synchronous = full");
  if (done === "ready") return undefined;
  const refusal = await database.read(() => refuseLater(database));
  if (refusal !== undefined) return refusal;
  // Somebody may just be reading.
  await execInTime(database.raw, "PRAGMA journal_mode = wal", patience);
  const migrated = await database.write(() => {
    for (let version = versionOf(database); version < MIGRATIONS.length; version++) {
      database.raw.exec(MIGRATIONS[version] as string);
      database.raw.exec(`PRAGMA user_version = ${version + 1}; PRAGMA application_id = ${APPLICATION_ID}`);
    }
    chainOldWrites(database);
    return "done" as const;
  });
  if (isProblem(migrated)) return migrated;
  const isIn = await tryInTime(patience, () => (gate.enter("together") ? "in" : undefined));
  return isIn === undefined ? isServedOtherwise(path) : undefined;
}

/** Writes go through a log beside the file, whoever opens it. */
/** What a try gives; nothing where another connection is in the way for the moment. */
function unlessBusy<Answer>(attempt: () => Answer): Answer | undefined {
  try {
    return attempt();
  } catch (failure) {
    if (!isBusy(failure)) throw failure;
    return undefined;
  }
}

const isLogged = (database: Database): boolean =>
  database.get<{ journal_mode: string }>("PRAGMA journal_mode")?.journal_mode === "wal";

const isServedOtherwise = (path: string): Problem =>
  problem(
    "STORE_LOCKED",
    `Scribelines of another version write to ${path}, or one is just bringing it up to date. Stop them, try again in a minute, or choose another data folder (SCRIBELINE_DATA).`,
  );

const noSuchFile = (path: string): Problem =>
  problem("STORE_UNREACHABLE", `There is no store at ${path}; start the server once, or restore a dump.`);

/** Folders fail before SQLite is asked. */
function findFolderProblem(failure: unknown, path: string): Problem | undefined {
  const code = (failure as { readonly code?: unknown }).code;
  if (code === "ENOSPC")
    return problem("STORE_FULL", `The disk has no room for the folder of ${path}; make room and try again.`);
  if (["EACCES", "EPERM", "EROFS", "ENOTDIR", "EEXIST"].includes(String(code)))
    return problem(
      "STORE_UNREACHABLE",
      `The folder of ${path} cannot be made or written; check its permissions or choose another (SCRIBELINE_DATA).`,
    );
  return undefined;
}
