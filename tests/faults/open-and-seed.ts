import { readConfig } from "#server/config.ts";
import { isProblem } from "#server/domain/problem.ts";
import { openData } from "#server/open-data.ts";
import { refuse } from "#server/refuse.ts";

/** Program for the tests of faults: opens the store that the settings name as a start does, says how it stands, and ends. */
async function main(): Promise<void> {
  const config = readConfig(process.env);
  if (!("port" in config)) return refuse(...config);
  const opened = await openData(config);
  if (isProblem(opened)) return refuse(opened);
  const newest = await opened.store.newestRevision();
  await opened.store.close();
  process.stdout.write(`${JSON.stringify({ seeded: opened.seeded, hash: newest?.hash })}\n`);
}

await main();
