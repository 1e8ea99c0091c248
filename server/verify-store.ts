import { parseArgs } from "node:util";
import { readConfig } from "./config.ts";
import { isProblem } from "./domain/problem.ts";
import { openStore } from "./open-data.ts";
import { refuse } from "./refuse.ts";
import { runCommand } from "./run-command.ts";
import { verifyMirror } from "./stores/mirror/verify-mirror.ts";

/** Asks at random whose answers are compared. */
const ASKS = 500;

/**
 * Recomputes the whole history of the store; with `--mirror` compares the mirror with the store instead. Exit status: 0, or 2
 * for a refusal.
 */
async function main(): Promise<void> {
  const { values } = parseArgs({ options: { mirror: { type: "boolean", default: false } } });
  const config = readConfig(process.env);
  if (!("dataFolder" in config)) return refuse(...config);
  const store = await openStore(config, { readOnly: true });
  if (isProblem(store)) return refuse(store);
  try {
    if (values.mirror) {
      const mirrored = await verifyMirror(store, { asks: ASKS, random: Math.random });
      if (isProblem(mirrored)) return refuse(mirrored);
      const { terms, claims, patched, asks } = mirrored;
      process.stdout.write(
        `The mirror holds ${terms} terms and ${claims} claims as the store does, ${patched} revisions of it patched; ${asks} walks at random are answered alike.\n`,
      );
      return;
    }
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
