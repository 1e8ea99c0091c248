import { join } from "node:path";
import { openNeo4jStore } from "#server/stores/neo4j/open-neo4j-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { asSetting, newAddress } from "#tests/support/neo4j/store-address.ts";
import { countStanding } from "../count-standing.ts";
import { addCounts, type Counts, NOTHING_COUNTED } from "../counts.ts";
import type { Fault } from "../fault.ts";
import { openLedger } from "../ledger.ts";
import { type Known, runClients } from "../run-clients.ts";
import { startScribeline } from "../scribeline-process.ts";
import { inTemporaryFolder } from "../temporary-folder.ts";

const KILLS_A_STORE = 5;
const DEADLINE = 5_000;
/** An answer may be later than the deadline by as much as a busy machine takes, in milliseconds. */
const GRACE = 5_000;
/** Writes that are acknowledged again before the next kill. */
const GOES_ON = 10;

export const killNeo4j: Fault = {
  name: "kill-neo4j",
  what: "kill -9 (one in five: SIGTERM) of Neo4j while clients write by a server, which is not restarted",
  times: 50,
  round: (random, kills, { ownNeo4j }) =>
    inTemporaryFolder(async (folder) => {
      const neo4j = await ownNeo4j();
      const address = newAddress(neo4j);
      const settings = { SCRIBELINE_STORE: asSetting(address), SCRIBELINE_DEADLINE: String(DEADLINE) };
      const server = await startScribeline(settings);
      const ledger = openLedger(join(folder, "ledger.jsonl"));
      const known: Known = new Map();
      const clients = runClients({
        ...{ doors: () => [server], ledger, random, known, run: "c", most: 9, pause: 200 },
        patience: DEADLINE + 2 * GRACE,
      });
      let counts: Counts = NOTHING_COUNTED;
      for (let kill = 0; kill < Math.min(kills, KILLS_A_STORE); kill++) {
        await clients.kept(GOES_ON + random.below(40));
        await new Promise((resolve) => setTimeout(resolve, random.below(100)));
        const isGentle = random.chance(0.2);
        await (isGentle ? neo4j.end() : neo4j.kill());
        await new Promise((resolve) => setTimeout(resolve, random.below(kills === 1 ? 1_000 : 6_000)));
        await neo4j.startAgain();
        counts = addCounts(counts, { faults: 1, also: { [isGentle ? "told to end" : "killed"]: 1 } });
      }
      await clients.kept(GOES_ON);
      await clients.stop();
      const status = await server.stop();
      const store = answered(await openNeo4jStore(address));
      const standing = await countStanding(ledger.entries(), store);
      await store.close();
      const findings = [...standing.findings, ...clients.untyped];
      if (status !== 0) findings.push(`the server ended with ${status}`);
      if (clients.slowest() > DEADLINE + GRACE)
        findings.push(`an answer took ${Math.round(clients.slowest())} ms of ${DEADLINE}`);
      return addCounts(counts, { ...standing, findings, slowest: clients.slowest() });
    }),
};
