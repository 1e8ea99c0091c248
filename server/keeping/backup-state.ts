import { open, readFile, rename } from "node:fs/promises";
import { join } from "node:path";

/** A backup whose rehearsal went well. */
export interface GoodBackup {
  readonly file: string;
  /** When it was begun, ISO 8601 in UTC. */
  readonly at: string;
  /** SHA-256 in the trailer of the dump, which the rehearsal gave again. */
  readonly sha256: string;
  readonly bytes: number;
  readonly revisions: number;
  readonly examinations: number;
  /** How long it took with the rehearsal. */
  readonly seconds: number;
}

/** How the backups of a folder stand, kept there as `backups.json`. */
export interface BackupState {
  readonly format: "scribeline/backups";
  readonly version: 1;
  /** The newest try, good or not; `code` says why not. */
  readonly lastTry: { readonly at: string; readonly code?: string; readonly message?: string };
  readonly lastGood?: GoodBackup;
}

const FILE = "backups.json";

/** What is known of the backups of a folder; nothing where none was made, or the file cannot be made out. */
export async function readBackupState(folder: string): Promise<BackupState | undefined> {
  try {
    const state = JSON.parse(await readFile(join(folder, FILE), "utf8")) as Partial<BackupState> | null;
    const isKnown = state?.format === "scribeline/backups" && state.version === 1;
    return isKnown && typeof state.lastTry?.at === "string" ? (state as BackupState) : undefined;
  } catch {
    return undefined;
  }
}

/** Keeps how the backups stand; the file is whole at every moment. */
export async function keepBackupState(
  folder: string,
  state: Omit<BackupState, "format" | "version">,
): Promise<void> {
  const file = join(folder, FILE);
  const handle = await open(`${file}.part`, "w", 0o600);
  try {
    await handle.writeFile(
      `${JSON.stringify({ format: "scribeline/backups", version: 1, ...state }, undefined, 2)}\n`,
    );
    await handle.sync();
  } finally {
    await handle.close();
  }
  await rename(`${file}.part`, file);
}
