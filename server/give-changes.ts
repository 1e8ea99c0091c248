import { writeFile } from "node:fs/promises";
import { parseArgs } from "node:util";
import { readConfig } from "./config.ts";
import { LOCAL_CALLER } from "./domain/people/caller.ts";
import { isProblem, problem } from "./domain/problem.ts";
import { openStore } from "./open-data.ts";
import { openSeals } from "./proof/open-seals.ts";
import { refuse } from "./refuse.ts";
import { runCommand } from "./run-command.ts";
import { showUsage } from "./show-usage.ts";
import { giveChanges } from "./use-cases/chronicle/give-changes.ts";
import { isRefusal } from "./use-cases/refusal.ts";

const USAGE = `npm run give -- changes.json [--since N]

  changes.json  file that is written: what was accepted, signed by the house (docs/formats/changes.schema.json)
  --since N     only what was accepted after revision N; all if it is left out
`;

const now = (): string => new Date().toISOString();

/** Writes what the house accepted to a file for another house. Exit status: 0, or 2 for a refusal. */
async function main(): Promise<void> {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { since: { type: "string", default: "0" }, help: { type: "boolean" } },
  });
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0 || values.help || !/^\d{1,9}$/.test(values.since))
    return showUsage(USAGE);
  const config = readConfig(process.env);
  if (!("dataFolder" in config)) return refuse(...config);
  const store = await openStore(config, { readOnly: true });
  if (isProblem(store)) return refuse(store);
  try {
    const seals = openSeals(config.dataFolder, now);
    const given = await giveChanges({ store, seals, now, caller: LOCAL_CALLER }, Number(values.since));
    if (isRefusal(given)) return refuse(...given.refused);
    await writeFile(file, `${JSON.stringify(given)}\n`, { flush: true }).catch((failure: Error) =>
      refuse(problem("UNREADABLE_FILE", `${file} cannot be written (${failure.message}).`)),
    );
    if (process.exitCode) return;
    process.stderr.write(
      `Wrote ${given.edits.length} edits, from revision ${given.since.revision} to ${given.until.revision}, as ${given.house}, to ${file}\n`,
    );
  } finally {
    await store.close();
  }
}

await runCommand(main);
