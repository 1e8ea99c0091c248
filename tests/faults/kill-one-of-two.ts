import type { RandomSource } from "#server/generator/random-source.ts";
import type { Store } from "#server/ports/store.ts";
import { countStanding } from "./count-standing.ts";
import { addCounts, type Counts, NOTHING_COUNTED } from "./counts.ts";
import { openLedger } from "./ledger.ts";
import { type Known, runClients } from "./run-clients.ts";
import { type ScribelineProcess, startScribeline } from "./scribeline-process.ts";

/** Kills of one store; it is looked through at the end, and while the other server goes on after each. */
const KILLS_A_STORE = 5;

/** Two servers on one store; one of them is killed, the other goes on, the first comes back. */
export async function killOneOfTwo({
  random,
  kills,
  settings,
  ledger: file,
  open,
}: {
  readonly random: RandomSource;
  readonly kills: number;
  readonly settings: Readonly<Record<string, string>>;
  readonly ledger: string;
  readonly open: () => Promise<Store>;
}): Promise<Counts> {
  const servers: ScribelineProcess[] = [await startScribeline(settings), await startScribeline(settings)];
  const ledger = openLedger(file);
  const known: Known = new Map();
  let counts: Counts = NOTHING_COUNTED;
  for (let kill = 0; kill < Math.min(kills, KILLS_A_STORE); kill++) {
    const clients = runClients({
      doors: () => servers,
      ledger,
      random,
      known,
      run: `r${kill}`,
      count: 6,
      most: 9,
    });
    await clients.answers(10 + random.below(50));
    await new Promise((resolve) => setTimeout(resolve, random.below(60)));
    const [dying] = servers.splice(random.below(2), 1);
    await dying?.kill();
    await clients.kept(5);
    await clients.stop();
    servers.push(await startScribeline(settings));
    counts = addCounts(counts, { faults: 1, slowest: clients.slowest(), findings: clients.untyped });
  }
  const statuses = await Promise.all(servers.map((server) => server.stop()));
  const findings = statuses.filter((status) => status !== 0).map((status) => `a server ended with ${status}`);
  const store = await open();
  const standing = await countStanding(ledger.entries(), store);
  await store.close();
  return addCounts(addCounts(counts, standing), { findings });
}
