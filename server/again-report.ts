import { findBrokenSeal } from "./chain/find-broken-seal.ts";
import { sha256 } from "./chain/sha256.ts";
import { readConfig } from "./config.ts";
import { isProblem } from "./domain/problem.ts";
import { readJsonFile } from "./formats/read-json-file.ts";
import { readKeptReport } from "./formats/read-sealed.ts";
import { openStore } from "./open-data.ts";
import { refuse } from "./refuse.ts";
import { runCommand } from "./run-command.ts";
import { showUsage } from "./show-usage.ts";
import { examineAgain } from "./use-cases/chronicle/examine-again.ts";
import { isRefusal } from "./use-cases/refusal.ts";

const USAGE = `npm run --silent again -- report.json

  report.json  a signed report, as docs/formats/kept-report.schema.json says, as the page of the piece hands it out
`;

/** Largest file of a signed report that is read, in bytes. */
const LARGEST_REPORT = 20_000_000;

/** Examines again as on its day, and compares. Exit status: 0 for the same bytes, 1 for others, 2 for what cannot be compared. */
async function main(): Promise<void> {
  const [file, ...more] = process.argv.slice(2);
  if (file === undefined || file === "--help" || more.length > 0) return showUsage(USAGE);
  const json = await readJsonFile(file, LARGEST_REPORT);
  if (isProblem(json)) return refuse(json);
  const kept = readKeptReport(json.value);
  if (isProblem(kept)) return refuse(kept);
  const config = readConfig(process.env);
  if (!("dataFolder" in config)) return refuse(...config);
  const store = await openStore(config, { readOnly: true });
  if (isProblem(store)) return refuse(store);
  try {
    const seals = { findFault: findBrokenSeal, hash: sha256 };
    const again = await examineAgain({ store, seals }, kept);
    if (isRefusal(again)) return refuse(...again.refused);
    process.stdout.write(`${again.says}\nbefore ${again.before}\nnow    ${again.now}\n`);
    for (const { at, before = "nothing", after = "nothing" } of again.differences)
      process.stdout.write(`${at || "/"}: ${before} became ${after}\n`);
    if (!again.isSame) process.exitCode = 1;
  } finally {
    await store.close();
  }
}

await runCommand(main);
