import { join } from "node:path";
import { storeFile } from "#server/open-data.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { countStanding } from "../count-standing.ts";
import { addCounts, type Counts, NOTHING_COUNTED } from "../counts.ts";
import type { Fault } from "../fault.ts";
import { openLedger } from "../ledger.ts";
import { type Known, runClients } from "../run-clients.ts";
import { beginScribeline, startScribeline } from "../scribeline-process.ts";
import { inTemporaryFolder } from "../temporary-folder.ts";

/** Kills of one store: it grows, and is looked through after each. */
const KILLS_A_STORE = 10;

export const killServer: Fault = {
  name: "kill-server",
  what: "kill -9 of the server while clients write to a SQLite file, also while it starts",
  times: 500,
  round: (random, most) =>
    inTemporaryFolder(async (folder) => {
      const settings = { SCRIBELINE_DATA: folder };
      const ledger = openLedger(join(folder, "ledger.jsonl"));
      const known: Known = new Map();
      let counts: Counts = NOTHING_COUNTED;
      for (let kill = 0; kill < Math.min(most, KILLS_A_STORE); kill++) {
        if (random.chance(0.1)) {
          const { process } = beginScribeline(settings);
          await new Promise((resolve) => setTimeout(resolve, random.below(1500)));
          await process.kill();
          counts = addCounts(counts, { faults: 1, also: { "while it started": 1 } });
          continue;
        }
        const server = await startScribeline(settings);
        const clients = runClients({
          doors: () => [server],
          ledger,
          random,
          known,
          run: `r${kill}`,
          most: 9,
        });
        await clients.answers(random.below(40) + 1);
        await new Promise((resolve) => setTimeout(resolve, random.below(60)));
        const dying = server.kill();
        await clients.stop();
        await dying;
        const readOnly = random.chance(0.5);
        const store = answered(await openSqliteStore(storeFile(folder), { readOnly }));
        const { findings } = await countStanding(ledger.entries(), store);
        await store.close();
        counts = addCounts(counts, {
          faults: 1,
          slowest: clients.slowest(),
          findings: [...findings, ...clients.untyped],
        });
      }
      const store = answered(await openSqliteStore(storeFile(folder)));
      const { findings: _, ...standing } = await countStanding(ledger.entries(), store);
      await store.close();
      return addCounts(counts, standing);
    }),
};
