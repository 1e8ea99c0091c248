import { readConfig } from "./config.ts";
import { isProblem } from "./domain/problem.ts";
import { openStore } from "./open-data.ts";
import { refuse } from "./refuse.ts";
import { runCommand } from "./run-command.ts";

/** Recomputes the whole history of the store of the data folder. Exit status: 0, or 2 for a refusal. */
async function main(): Promise<void> {
  const config = readConfig(process.env);
  if (!("dataFolder" in config)) return refuse(...config);
  const store = await openStore(config, { readOnly: true });
  if (isProblem(store)) return refuse(store);
  try {
    const verified = await store.verify();
    if (isProblem(verified)) return refuse(verified);
    process.stdout.write(
      `${verified.revisions} revisions check, and every row follows from them. Newest hash: ${verified.head}\n`,
    );
  } finally {
    await store.close();
  }
}

await runCommand(main);
