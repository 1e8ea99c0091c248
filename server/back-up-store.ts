import { mkdirSync } from "node:fs";
import { setPriority } from "node:os";
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { type Config, readConfig } from "./config.ts";
import { isProblem, type Problem, problem } from "./domain/problem.ts";
import { backUp } from "./keeping/back-up.ts";
import { readBackupState } from "./keeping/backup-state.ts";
import { findDiskProblem } from "./keeping/find-disk-problem.ts";
import { holdFolder } from "./keeping/hold-folder.ts";
import { isDue } from "./keeping/schedule-backups.ts";
import { openStore, storeFile } from "./open-data.ts";
import { refuse } from "./refuse.ts";
import { runCommand } from "./run-command.ts";
import { sayKeyBeside } from "./say-house-key.ts";
import { sayProgress } from "./say-progress.ts";
import { showUsage } from "./show-usage.ts";
import { openSqliteStore } from "./stores/sqlite/open-sqlite-store.ts";

const USAGE = `npm run back-up -- folder             backs the store up into a folder (else SCRIBELINE_BACKUPS), rehearses the restore, and
                                      removes what is older than the newest SCRIBELINE_BACKUPS_KEPT (7)
npm run back-up -- folder --if-due 24  does nothing if a good one is younger than so many hours
`;

interface Asked {
  readonly folder: string;
  readonly dueAfter: number | undefined;
}

function readArguments(config: Config): Asked | undefined {
  try {
    const { values, positionals } = parseArgs({
      allowPositionals: true,
      options: { "if-due": { type: "string" } },
    });
    const [named = config.backups.folder, ...more] = positionals;
    const hours = values["if-due"];
    if (named === undefined || more.length > 0 || (hours !== undefined && !/^[1-9]\d{0,4}$/.test(hours)))
      return undefined;
    return { folder: resolve(named), dueAfter: hours === undefined ? undefined : Number(hours) };
  } catch {
    return undefined;
  }
}

/** Makes the folder, and keeps others out of it. */
function enterFolder(folder: string): (() => void) | Problem {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
  } catch (failure) {
    return (
      findDiskProblem(failure, folder) ?? problem("UNREADABLE_FILE", `The folder ${folder} cannot be made.`)
    );
  }
  return holdFolder(folder);
}

/** Backs the store of the settings up, also while a server is running. Exit status: 0, or 2 for a refusal. */
async function main(): Promise<void> {
  const config = readConfig(process.env);
  if (!("dataFolder" in config)) return refuse(...config);
  const asked = readArguments(config);
  if (asked === undefined) return showUsage(USAGE);
  const { folder, dueAfter } = asked;
  const leave = enterFolder(folder);
  if (isProblem(leave)) return refuse(leave);
  try {
    if (dueAfter !== undefined) {
      if (!isDue(await readBackupState(folder), new Date(), dueAfter)) return;
      // Made beside a server: what people wait for goes first.
      setPriority(10);
    }
    await makeBackup(config, folder);
  } finally {
    leave();
  }
}

async function makeBackup(config: Config, folder: string): Promise<void> {
  const progress = sayProgress();
  try {
    const made = await backUp({
      openStore: () => openStore(config, { readOnly: true }),
      ...{ folder, keep: config.backups.keep },
      openScratch: (scratch) => openSqliteStore(storeFile(scratch)),
      now: () => new Date(),
      tell: progress.tell,
    });
    progress.done();
    if (isProblem(made)) return refuse(made);
    const { file, sha256, bytes, seconds } = made.backup;
    process.stdout.write(`${sha256}  ${file}\n`);
    process.stderr.write(
      `Backed up into ${folder} (${bytes} bytes, ${seconds} s); the restore was rehearsed and gave the same hash.${made.removed.length > 0 ? ` Removed ${made.removed.join(", ")}.` : ""}\n`,
    );
    const beside = sayKeyBeside(config.dataFolder);
    if (beside !== undefined) process.stderr.write(`${beside}\n`);
  } finally {
    progress.done();
  }
}

await runCommand(main);
