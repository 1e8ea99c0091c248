import { open, rename, rm } from "node:fs/promises";
import { join } from "node:path";
import type { Writable } from "node:stream";
import { isProblem, type Problem } from "../domain/problem.ts";
import type { Progress } from "../ports/progress.ts";
import type { Store } from "../ports/store.ts";
import { StoreFailed } from "../ports/store-failed.ts";
import { backupName, clearLeftBehind, listBackups } from "./backup-files.ts";
import { type GoodBackup, keepBackupState, readBackupState } from "./backup-state.ts";
import { findDiskProblem } from "./find-disk-problem.ts";
import { packDump } from "./pack-dump.ts";
import { type OpenScratch, rehearseRestore } from "./rehearse-restore.ts";

export interface BackUpOptions {
  /** Opens the store that is backed up; it is closed afterwards. */
  readonly openStore: () => Promise<Store | Problem>;
  /** Where backups lie. It is there, and nobody else is at work in it. */
  readonly folder: string;
  /** How many to keep, this one among them. */
  readonly keep: number;
  readonly openScratch: OpenScratch;
  readonly now: () => Date;
  readonly tell: Progress;
  /** How the file is opened to write. */
  readonly openToWrite?: (path: string) => Writable;
}

/** What was made, and which older ones went for it. */
export interface BackedUp {
  readonly backup: GoodBackup;
  readonly removed: readonly string[];
}

/**
 * Backs up a store while it is used: a dump of one moment, compressed, that has its name only once it was restored into a
 * store of its own and gave the same hash. Only then older ones than the newest `keep` are removed; a backup that fails
 * removes nothing. How it went is kept in the folder. Rules [S56] to [S58] of docs/spec/4-store.md.
 */
export async function backUp(options: BackUpOptions): Promise<BackedUp | Problem> {
  const { folder, now } = options;
  const begun = now();
  const made = await tryBackUp(options, begun).catch((failure: unknown) => {
    const refusal = failure instanceof StoreFailed ? failure.problem : findDiskProblem(failure, folder);
    if (refusal === undefined) throw failure;
    return refusal;
  });
  const at = begun.toISOString();
  const { lastGood } = (await readBackupState(folder)) ?? {};
  const state = isProblem(made)
    ? {
        lastTry: { at, code: made.code, message: made.message },
        ...(lastGood === undefined ? {} : { lastGood }),
      }
    : { lastTry: { at }, lastGood: made };
  const kept = await keepBackupState(folder, state).then(
    () => undefined,
    (failure: unknown) => findDiskProblem(failure, folder),
  );
  if (isProblem(made)) return made;
  if (kept !== undefined) return kept;
  return { backup: made, removed: await removeOlder(folder, made.file, options.keep) };
}

async function tryBackUp(options: BackUpOptions, begun: Date): Promise<GoodBackup | Problem> {
  await clearLeftBehind(options.folder);
  const store = await options.openStore();
  if (isProblem(store)) return store;
  try {
    return await makeFile(store, options, begun);
  } finally {
    await store.close();
  }
}

async function makeFile(store: Store, options: BackUpOptions, begun: Date): Promise<GoodBackup | Problem> {
  const { folder, openScratch, now, tell } = options;
  const number = ((await listBackups(folder)).at(-1)?.number ?? 0) + 1;
  const at = begun.toISOString();
  const file = backupName(number, at);
  const part = join(folder, `${file}.part`);
  try {
    const { seen, bytes } = await packDump(
      store,
      part,
      ({ edits }) => tell(() => `Backing up: ${edits} edits`),
      options.openToWrite,
    );
    const sha256 = seen.sha256 ?? "";
    const refusal = await rehearseRestore(part, sha256, { open: openScratch, tell });
    if (refusal !== undefined) return refusal;
    await rename(part, join(folder, file));
    await syncFolder(folder);
    const seconds = Math.round((now().getTime() - begun.getTime()) / 100) / 10;
    const [revisions, examinations] = [seen.revisions, seen.versions.size];
    return { file, at, sha256, bytes, revisions, examinations, seconds };
  } finally {
    await rm(part, { force: true });
  }
}

/** So that the name of a file survives the loss of power; where folders cannot be flushed, it does without. */
async function syncFolder(folder: string): Promise<void> {
  const handle = await open(folder).catch(() => undefined);
  await handle?.sync().catch(() => undefined);
  await handle?.close();
}

/** Removes what is older than the newest `keep`, the one just made among them. What cannot be removed stays. */
async function removeOlder(folder: string, made: string, keep: number): Promise<readonly string[]> {
  const files = await listBackups(folder);
  if (!files.some(({ name }) => name === made)) return [];
  const removed: string[] = [];
  for (const { name } of files.slice(0, -keep))
    await rm(join(folder, name)).then(
      () => removed.push(name),
      () => undefined,
    );
  return removed;
}
