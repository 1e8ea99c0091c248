import { join } from "node:path";
import { openNeo4jStore } from "#server/stores/neo4j/open-neo4j-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { cuttingProxy } from "#tests/support/neo4j/cutting-proxy.ts";
import { asSetting, newAddress } from "#tests/support/neo4j/store-address.ts";
import { countStanding } from "../count-standing.ts";
import { addCounts, type Counts, NOTHING_COUNTED } from "../counts.ts";
import type { Fault } from "../fault.ts";
import { openLedger } from "../ledger.ts";
import { readAllTheTime } from "../read-all-the-time.ts";
import { type Known, runClients } from "../run-clients.ts";
import { startScribeline } from "../scribeline-process.ts";
import { inTemporaryFolder } from "../temporary-folder.ts";

const SPELLS_A_STORE = 5;
const DEADLINE = 4_000;
/** An answer may be later than the deadline by as much as a busy machine takes, in milliseconds. */
const GRACE = 5_000;

export const slowNeo4j: Fault = {
  name: "slow-neo4j",
  what: "Neo4j slow (each piece of data 20 to 2,000 ms late) or silent for up to 15 s while clients write and read",
  times: 50,
  // A single spell is short.
  round: (random, spells, { neo4j }) =>
    inTemporaryFolder(async (folder) => {
      const neo4jServer = await neo4j();
      const proxy = await cuttingProxy(neo4jServer.host);
      const address = newAddress(neo4jServer, { host: proxy.host });
      const settings = { SCRIBELINE_STORE: asSetting(address), SCRIBELINE_DEADLINE: String(DEADLINE) };
      const server = await startScribeline(settings);
      const ledger = openLedger(join(folder, "ledger.jsonl"));
      const known: Known = new Map();
      const clients = runClients({
        ...{ doors: () => [server], ledger, random, known, run: "c", most: 9, pause: 100 },
        patience: DEADLINE + 2 * GRACE,
      });
      const reader = readAllTheTime(server.url);
      let counts: Counts = NOTHING_COUNTED;
      for (let spell = 0; spell < Math.min(spells, SPELLS_A_STORE); spell++) {
        await clients.kept(3 + random.below(10));
        const late = random.pick([20, 200, 1_000, 2_000, Number.POSITIVE_INFINITY]);
        proxy.delay(late);
        await new Promise((resolve) =>
          setTimeout(resolve, 1_000 + random.below(spells === 1 ? 4_000 : 14_000)),
        );
        proxy.delay(0);
        counts = addCounts(counts, { faults: 1, also: { [Number.isFinite(late) ? "slow" : "silent"]: 1 } });
      }
      await clients.kept(3);
      await clients.stop();
      const reads = await reader.stop();
      const status = await server.stop();
      await proxy.close();
      const store = answered(await openNeo4jStore({ ...address, url: `bolt://${neo4jServer.host}` }));
      const standing = await countStanding(ledger.entries(), store);
      await store.close();
      const findings = [...standing.findings, ...clients.untyped, ...reads.findings];
      if (status !== 0) findings.push(`the server ended with ${status}`);
      const slowest = Math.max(clients.slowest(), reads.slowest);
      if (slowest > DEADLINE + GRACE)
        findings.push(`an answer took ${Math.round(slowest)} ms of ${DEADLINE}`);
      const also = { "reads meanwhile": reads.count, "of them refused": reads.failed };
      return addCounts(counts, { ...standing, findings, slowest, also });
    }),
};
