import { parseArgs } from "node:util";
import { findBrokenSeal } from "./chain/find-broken-seal.ts";
import { readConfig } from "./config.ts";
import { isProblem, problem } from "./domain/problem.ts";
import { readJsonFile } from "./formats/read-json-file.ts";
import { readCheckpoint } from "./formats/read-sealed.ts";
import { openStore } from "./open-data.ts";
import type { Store } from "./ports/store.ts";
import { refuse } from "./refuse.ts";
import { runCommand } from "./run-command.ts";
import { sayProgress } from "./say-progress.ts";
import { verifyMirror } from "./stores/mirror/verify-mirror.ts";
import { judgeCheckpoint } from "./use-cases/chronicle/judge-checkpoint.ts";
import { proveHistory } from "./use-cases/chronicle/prove-history.ts";

/** Asks at random whose answers are compared. */
const ASKS = 500;
/** Largest file of a checkpoint that is read, in bytes. */
const LARGEST_CHECKPOINT = 1_000_000;

const seals = { findFault: findBrokenSeal };
const say = (text: string) => process.stdout.write(`${text}\n`);

async function compareMirror(store: Store): Promise<void> {
  const mirrored = await verifyMirror(store, { asks: ASKS, random: Math.random });
  if (isProblem(mirrored)) return refuse(mirrored);
  const { terms, claims, patched, asks } = mirrored;
  say(
    `The mirror holds ${terms} terms and ${claims} claims as the store does, ${patched} revisions of it patched; ${asks} walks at random are answered alike.`,
  );
}

/** Holds a checkpoint that somebody else kept against the store. */
async function compareCheckpoint(store: Store, file: string): Promise<void> {
  const json = await readJsonFile(file, LARGEST_CHECKPOINT);
  if (isProblem(json)) return refuse(json);
  const checkpoint = readCheckpoint(json.value);
  if (isProblem(checkpoint)) return refuse(checkpoint);
  const { holds, says } = await judgeCheckpoint({ store, seals }, checkpoint);
  const { house, at, revision } = checkpoint;
  if (!holds) return refuse(problem("OTHER_HISTORY", says, ["revision", revision]));
  say(`The checkpoint that ${house} signed on ${at} holds. ${says}`);
}

/** For the server that started this: a line of JSON for each word of progress, and one for the outcome. */
async function tellVerified(store: Store): Promise<void> {
  let last = 0;
  const verified = await store.verify((words) => {
    if (performance.now() - last < 100) return;
    last = performance.now();
    say(JSON.stringify({ progress: words() }));
  });
  say(JSON.stringify(isProblem(verified) ? { refused: verified } : { verified }));
}

async function verifyAll(store: Store, files: readonly string[]): Promise<void> {
  const { tell, done } = sayProgress();
  const proven = await proveHistory({ store, seals, verify: (progress) => store.verify(progress) }, tell);
  done();
  if (isProblem(proven)) return refuse(proven);
  const checkpoints = proven.checkpoints === 0 ? "" : ` ${proven.checkpoints} checkpoints of the house hold.`;
  say(
    `${proven.revisions} revisions check, and every row follows from them.${checkpoints} Newest hash: ${proven.head}`,
  );
  for (const file of files) await compareCheckpoint(store, file);
}

/**
 * Recomputes the whole history of the store, holds the checkpoints of the house against it, and those in files that another house
 * kept (`--checkpoint file`); with `--mirror` compares the mirror with the store instead. Exit status: 0, or 2 for a refusal.
 */
async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      mirror: { type: "boolean", default: false },
      tell: { type: "boolean", default: false },
      checkpoint: { type: "string", multiple: true, default: [] },
    },
  });
  const config = readConfig(process.env);
  if (!("dataFolder" in config)) return refuse(...config);
  const store = await openStore(config, { readOnly: true });
  if (isProblem(store)) return refuse(store);
  try {
    if (values.mirror) await compareMirror(store);
    else if (values.tell) await tellVerified(store);
    else await verifyAll(store, values.checkpoint);
  } finally {
    await store.close();
  }
}

await runCommand(main);
