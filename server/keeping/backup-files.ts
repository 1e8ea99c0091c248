import { readdir, rm } from "node:fs/promises";
import { join } from "node:path";

/** A backup in its folder. */
export interface BackupFile {
  readonly name: string;
  /** 1, 2, 3 … in the order in which they were made: a clock that is set back does not make a new one old. */
  readonly number: number;
}

const NAME = /^backup-(\d{6,})-\d{8}T\d{6}Z\.jsonl\.zst$/;
/** What a backup that was broken off leaves: what is not whole yet, and the store of a rehearsal. */
const LEFT_BEHIND = /^backup.*\.part$|^rehearsal-/;

/** The name of a backup made at a time (ISO 8601, UTC). */
export const backupName = (number: number, at: string): string =>
  `backup-${String(number).padStart(6, "0")}-${at.slice(0, 19).replaceAll(/[-:]/g, "")}Z.jsonl.zst`;

/** The whole backups of a folder, oldest first; none if there is no such folder. */
export async function listBackups(folder: string): Promise<readonly BackupFile[]> {
  return (await namesIn(folder))
    .flatMap((name) => {
      const [, number] = NAME.exec(name) ?? [];
      return number === undefined ? [] : [{ name, number: Number(number) }];
    })
    .sort((a, b) => a.number - b.number);
}

/** Takes away what backups left that were broken off. Nobody else may be at work in the folder. */
export async function clearLeftBehind(folder: string): Promise<void> {
  for (const name of await namesIn(folder))
    if (LEFT_BEHIND.test(name)) await rm(join(folder, name), { recursive: true, force: true });
}

async function namesIn(folder: string): Promise<readonly string[]> {
  return readdir(folder).catch((failure: NodeJS.ErrnoException) => {
    if (failure.code === "ENOENT") return [];
    throw failure;
  });
}
