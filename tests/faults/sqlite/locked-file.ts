import { join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { storeFile } from "#server/open-data.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { countStanding } from "../count-standing.ts";
import { addCounts, type Counts, NOTHING_COUNTED } from "../counts.ts";
import type { Fault } from "../fault.ts";
import { openLedger } from "../ledger.ts";
import { readAllTheTime } from "../read-all-the-time.ts";
import { type Known, runClients } from "../run-clients.ts";
import { startScribeline } from "../scribeline-process.ts";
import { inTemporaryFolder } from "../temporary-folder.ts";

const LOCKS_A_STORE = 5;
const DEADLINE = 8_000;
/** An answer may be later than the deadline by as much as a busy machine takes, in milliseconds. */
const GRACE = 5_000;

export const lockedFile: Fault = {
  name: "locked-file",
  what: "a SQLite file locked against writers by another program for up to 12 seconds while clients write and read",
  times: 50,
  round: (random, locks) =>
    inTemporaryFolder(async (folder) => {
      const settings = { SCRIBELINE_DATA: folder, SCRIBELINE_DEADLINE: String(DEADLINE) };
      const server = await startScribeline(settings);
      const ledger = openLedger(join(folder, "ledger.jsonl"));
      const known: Known = new Map();
      const clients = runClients({
        ...{ doors: () => [server], ledger, random, known, run: "c", most: 9, count: 6, pause: 50 },
        patience: DEADLINE + 2 * GRACE,
      });
      const reader = readAllTheTime(server.url);
      let counts: Counts = NOTHING_COUNTED;
      for (let lock = 0; lock < Math.min(locks, LOCKS_A_STORE); lock++) {
        await clients.kept(5 + random.below(20));
        const other = new DatabaseSync(storeFile(folder), { timeout: 10_000 });
        other.exec("BEGIN IMMEDIATE");
        await new Promise((resolve) => setTimeout(resolve, random.pick([200, 1_000, 3_000, 6_000, 12_000])));
        other.exec(random.chance(0.5) ? "ROLLBACK" : "COMMIT");
        other.close();
        counts = addCounts(counts, { faults: 1 });
      }
      await clients.kept(5);
      await clients.stop();
      const reads = await reader.stop();
      const status = await server.stop();
      const store = answered(await openSqliteStore(storeFile(folder)));
      const standing = await countStanding(ledger.entries(), store);
      await store.close();
      const findings = [...standing.findings, ...clients.untyped, ...reads.findings];
      if (status !== 0) findings.push(`the server ended with ${status}`);
      if (clients.slowest() > DEADLINE + GRACE)
        findings.push(`an answer took ${Math.round(clients.slowest())} ms`);
      // Nobody who reads waits for a writer.
      if (reads.slowest > GRACE) findings.push(`a read took ${Math.round(reads.slowest)} ms`);
      return addCounts(counts, {
        ...{ ...standing, findings, slowest: clients.slowest() },
        also: { "reads meanwhile": reads.count },
      });
    }),
};
