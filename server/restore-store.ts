import { readConfig } from "./config.ts";
import { isProblem } from "./domain/problem.ts";
import { restoreDump } from "./dump/restore-dump.ts";
import { openStore, printPlace } from "./open-data.ts";
import { refuse } from "./refuse.ts";
import { runCommand } from "./run-command.ts";
import { sayLackingKey } from "./say-house-key.ts";
import { inWords, sayProgress } from "./say-progress.ts";

const USAGE =
  "npm run restore -- file.jsonl  restores a dump (or file.jsonl.zst) into an empty data folder (SCRIBELINE_DATA)\n";

/** Restores a dump, whole or not at all. Exit status: 0, or 2 for a refusal. */
async function main(): Promise<void> {
  const [file, ...more] = process.argv.slice(2);
  if (file === undefined || file === "--help" || more.length > 0) {
    process.stderr.write(USAGE);
    process.exitCode = file === "--help" ? 0 : 2;
    return;
  }
  const config = readConfig(process.env);
  if (!("dataFolder" in config)) return refuse(...config);
  const store = await openStore(config, { readOnly: false });
  if (isProblem(store)) return refuse(store);
  const progress = sayProgress();
  try {
    let edits = 0;
    const done = await restoreDump(store, file, (record) => {
      if (record.kind === "revision") edits += record.change.length;
      progress.tell(() => `Restoring: ${inWords(edits)} edits`);
    });
    progress.done();
    if (isProblem(done)) return refuse(done);
    process.stderr.write(`Restored ${done.records} records of ${file} into ${printPlace(config)}\n`);
    const lacking = await sayLackingKey(store, config.dataFolder);
    if (lacking !== undefined) process.stderr.write(`${lacking}\n`);
  } finally {
    await store.close();
  }
}

await runCommand(main);
