import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { RandomSource } from "#server/generator/random-source.ts";
import type { Store } from "#server/ports/store.ts";
import { allRows } from "#tests/support/read-all.ts";
import { countStanding } from "./count-standing.ts";
import { addCounts, type Counts, NOTHING_COUNTED } from "./counts.ts";
import { openLedger } from "./ledger.ts";
import { readAllTheTime } from "./read-all-the-time.ts";
import { type Known, runClients } from "./run-clients.ts";
import { startScribeline } from "./scribeline-process.ts";

const SETS_A_STORE = 10;
const HOUR = 3_600_000;
const DEADLINE = 8_000;
const GRACE = 5_000;

/** The clock of a server is set, again and again, while clients write; `folder` is for what they keep. */
export async function setClock({
  random,
  sets,
  settings,
  folder,
  open,
}: {
  readonly random: RandomSource;
  readonly sets: number;
  readonly settings: Readonly<Record<string, string>>;
  readonly folder: string;
  readonly open: () => Promise<Store>;
}): Promise<Counts> {
  const clock = join(folder, "clock");
  writeFileSync(clock, "0");
  const server = await startScribeline(
    { ...settings, FAULTS_CLOCK: clock, SCRIBELINE_DEADLINE: String(DEADLINE) },
    ["./tests/faults/shift-clock.ts"],
  );
  const ledger = openLedger(join(folder, "ledger.jsonl"));
  const known: Known = new Map();
  const clients = runClients({
    ...{ doors: () => [server], ledger, random, known, run: "c", most: 9, patience: DEADLINE + 2 * GRACE },
  });
  const reader = readAllTheTime(server.url);
  let counts: Counts = NOTHING_COUNTED;
  for (let set = 0; set < Math.min(sets, SETS_A_STORE); set++) {
    await clients.kept(3 + random.below(15));
    const shift = random.pick([-1, 1]) * random.pick([0.001, 0.02, 1, 24, 24 * 400, 0]) * HOUR;
    writeFileSync(clock, String(Math.round(shift)));
    process.kill(server.pid, "SIGUSR2");
    counts = addCounts(counts, {
      faults: 1,
      also: { [shift < 0 ? "set back" : "set forward, or right"]: 1 },
    });
  }
  await clients.kept(5);
  await clients.stop();
  const reads = await reader.stop();
  const status = await server.stop();
  const store = await open();
  const standing = await countStanding(ledger.entries(), store);
  const findings = [
    ...standing.findings,
    ...clients.untyped,
    ...reads.findings,
    ...(await findDisorder(store)),
  ];
  await store.close();
  if (status !== 0) findings.push(`the server ended with ${status}`);
  if (clients.slowest() > DEADLINE + GRACE)
    findings.push(`an answer took ${Math.round(clients.slowest())} ms`);
  return addCounts(counts, {
    ...{ ...standing, findings, slowest: clients.slowest() },
    also: { "reads meanwhile": reads.count },
  });
}

/** Lists page by page are in the order of what the clock said, each thing once, whatever that was. */
async function findDisorder(store: Store): Promise<readonly string[]> {
  const rows = await allRows((page) => store.listExaminations(page), 7);
  const whole = await allRows((page) => store.listExaminations(page), 200);
  const findings: string[] = [];
  if (JSON.stringify(rows) !== JSON.stringify(whole))
    findings.push("short pages hold other examinations than long ones");
  for (const [at, row] of rows.entries()) {
    const before = rows[at - 1];
    if (
      before &&
      (before.changedAt < row.changedAt || (before.changedAt === row.changedAt && before.id >= row.id))
    )
      findings.push(`${row.id} stands in the wrong place of the list`);
  }
  const revisions = await allRows((page) => store.revisions(page), 9);
  if (revisions.some(({ number }, at) => number !== revisions.length - at))
    findings.push("the list of revisions is not in the order of their numbers");
  return findings;
}
