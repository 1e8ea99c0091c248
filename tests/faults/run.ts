import { appendFileSync, existsSync, mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { randomSource } from "#server/generator/random-source.ts";
import { addCounts, type Counts, NOTHING_COUNTED } from "./counts.ts";
import type { Fault } from "./fault.ts";
import { FAULTS } from "./faults.ts";
import { openMeans } from "./open-means.ts";

const LOGS = fileURLToPath(new URL("../../.cache/faults", import.meta.url));

/** How often each is done where nobody says so. */
const SHORT = 3;

const USAGE = `npm run faults                              lists the faults
npm run faults -- name [--times N] [--seed S]   does one N times (${SHORT}; "all" or "full" for all that is due)

Each round is kept in .cache/faults/name-S.jsonl; the same command goes on where it was broken off.
`;

/** \`npm run faults\`: lets things go wrong and counts what was lost. Exit status: 0, or 1 if anything was found. */
async function main(): Promise<void> {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { times: { type: "string", default: String(SHORT) }, seed: { type: "string", default: "1" } },
  });
  const [name] = positionals;
  const wanted = FAULTS.filter((fault) => fault.name === name || name === "all");
  if (wanted.length === 0) {
    process.stdout.write(USAGE);
    for (const { name, what, times } of FAULTS)
      process.stdout.write(`  ${name}: ${what} (in full ${times} times)\n`);
    process.exitCode = name === undefined ? 0 : 2;
    return;
  }
  const means = openMeans();
  try {
    for (const fault of wanted) {
      const times = values.times === "full" ? fault.times : Number(values.times);
      const counts = await runFault(fault, times, Number(values.seed), means.means);
      if (counts.findings.length > 0) process.exitCode = 1;
    }
  } finally {
    await means.close();
  }
}

async function runFault(
  fault: Fault,
  times: number,
  seed: number,
  means: Parameters<Fault["round"]>[2],
): Promise<Counts> {
  mkdirSync(LOGS, { recursive: true });
  const log = join(LOGS, `${fault.name}-${seed}.jsonl`);
  const done = existsSync(log) ? readFileSync(log, "utf8").trim().split("\n").filter(Boolean) : [];
  let counts = NOTHING_COUNTED;
  for (const line of done) counts = addCounts(counts, JSON.parse(line) as Counts);
  for (let round = done.length; counts.faults < times; round++) {
    const made = await fault.round(randomSource(seed * 100_003 + round), times - counts.faults, means);
    appendFileSync(log, `${JSON.stringify(made)}\n`);
    counts = addCounts(counts, made);
    process.stdout.write(`${fault.name} round ${round}: ${inWords(made)}\n`);
    for (const finding of made.findings) process.stdout.write(`  FOUND ${finding}\n`);
  }
  process.stdout.write(`${fault.name}, seed ${seed}: ${inWords(counts)}\n`);
  return counts;
}

function inWords({ findings, slowest, also, stood, ...counted }: Counts): string {
  const { faults, sent, kept, refused, unanswered } = counted;
  const more = Object.entries(also).map(([name, count]) => `${count} ${name}`);
  return [
    `${faults} faults`,
    `${sent} writes sent`,
    `${kept} acknowledged`,
    `${refused} refused`,
    `${unanswered} without an answer (${stood} of them stand)`,
    `slowest ${Math.round(slowest)} ms`,
    ...more,
    `${findings.length} findings`,
  ].join(", ");
}

// Servers that were started are ended at the exit.
for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => process.exit(1));

await main();
