import { createWriteStream } from "node:fs";
import { rename, rm } from "node:fs/promises";
import { readConfig } from "./config.ts";
import { isProblem, type Problem, problem } from "./domain/problem.ts";
import { writeDump } from "./dump/write-dump.ts";
import { openStore, printPlace } from "./open-data.ts";
import type { Store } from "./ports/store.ts";
import { refuse } from "./refuse.ts";
import { runCommand } from "./run-command.ts";

const USAGE = `npm run dump -- file.jsonl          writes the whole store to a file
npm run --silent dump > file.jsonl  the same, to stdout
`;

/** Writes beside the file first, so that what stands under its name is always whole. */
async function dumpToFile(store: Store, file: string): Promise<Problem | undefined> {
  const part = `${file}.part`;
  try {
    await writeDump(store, createWriteStream(part, { flush: true }));
    await rename(part, file);
    return undefined;
  } catch (failure) {
    await rm(part, { force: true });
    return cannotWrite(file, failure);
  }
}

async function dumpToStdout(store: Store): Promise<Problem | undefined> {
  try {
    await writeDump(store, process.stdout);
    return undefined;
  } catch (failure) {
    if ((failure as NodeJS.ErrnoException).code === "EPIPE") return undefined;
    return cannotWrite("Standard output", failure);
  }
}

function cannotWrite(what: string, failure: unknown): Problem {
  const { code, message } = failure as NodeJS.ErrnoException;
  if (code === undefined || !/^E[A-Z]+$/.test(code)) throw failure;
  return problem(
    "UNREADABLE_FILE",
    `${what} cannot be written (${message}); make room, or name another file.`,
  );
}

/** npm prints two lines of its own to stdout unless it is told to be silent; they would make the dump a damaged one. */
const npmSpoilsStdout = (): boolean =>
  process.env["npm_lifecycle_event"] !== undefined && process.env["npm_config_loglevel"] !== "silent";

/** Dumps the store of the data folder, also while a server is running. Exit status: 0, or 2 for a refusal. */
async function main(): Promise<void> {
  const [file, ...more] = process.argv.slice(2);
  if (file === "--help" || more.length > 0) return void process.stderr.write(USAGE);
  if (file === undefined && npmSpoilsStdout())
    return refuse(
      problem(
        "WRONG_FORMAT",
        "npm's own lines would spoil the dump; use npm run dump -- file.jsonl, or npm run --silent dump > file.jsonl.",
      ),
    );
  const config = readConfig(process.env);
  if (!("dataFolder" in config)) return refuse(...config);
  const store = await openStore(config, { readOnly: true });
  if (isProblem(store)) return refuse(store);
  try {
    const refusal = await (file === undefined ? dumpToStdout(store) : dumpToFile(store, file));
    if (refusal !== undefined) return refuse(refusal);
    if (file === undefined) return;
    process.stderr.write(`Dumped the store of ${printPlace(config)} to ${file}\n`);
  } finally {
    await store.close();
  }
}

await runCommand(main);
