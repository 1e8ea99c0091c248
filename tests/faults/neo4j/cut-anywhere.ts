import { isProblem } from "#server/domain/problem.ts";
import { openNeo4jStore } from "#server/stores/neo4j/open-neo4j-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { cuttingProxy } from "#tests/support/neo4j/cutting-proxy.ts";
import { newAddress } from "#tests/support/neo4j/store-address.ts";
import { countStanding } from "../count-standing.ts";
import { addCounts, type Counts, NOTHING_COUNTED } from "../counts.ts";
import type { Fault } from "../fault.ts";
import { openWriter } from "../write-some.ts";

const BREAKS_A_STORE = 25;
/** About what a write sends and gets, in bytes: a break falls anywhere within, or into the next. */
const EXCHANGE = { client: 6_000, server: 2_000 };
/** Short, so that what went silent is found soon. */
const PATIENCE = 1_000;
/** A write is answered by then, whatever happens to its connection, in milliseconds. */
const LONGEST_ANSWER = 20_000;

export const cutAnywhere: Fault = {
  name: "cut-anywhere",
  what: "the connection to Neo4j cut, or silent without an end, after any number of bytes either way while writes go on",
  times: 500,
  round: async (random, breaks, { neo4j }) => {
    const server = await neo4j();
    const proxy = await cuttingProxy(server.host);
    const address = newAddress(server, { host: proxy.host });
    const store = answered(await openNeo4jStore(address, { patience: PATIENCE, rowsAtOnce: 8 }));
    const writer = openWriter(store, random, "w");
    let counts: Counts = NOTHING_COUNTED;
    for (let n = 0; n < Math.min(breaks, BREAKS_A_STORE); n++) {
      const from = random.pick(["client", "server"] as const);
      const how = random.chance(0.8) ? "cut" : "silent";
      const cutsBefore = proxy.cuts();
      proxy.breakOnce({ after: random.below(EXCHANGE[from]), from, how });
      const findings: string[] = [];
      let slowest = 0;
      while (proxy.cuts() === cutsBefore) {
        const begun = performance.now();
        await writer.next();
        slowest = Math.max(slowest, performance.now() - begun);
      }
      if (slowest > LONGEST_ANSWER)
        findings.push(`a write was answered after ${Math.round(slowest)} ms (${how})`);
      counts = addCounts(counts, { faults: 1, slowest, findings, also: { [`${how} from the ${from}`]: 1 } });
    }
    await store.close();
    await proxy.close();
    const looked = await openNeo4jStore({ ...address, url: `bolt://${server.host}` });
    if (isProblem(looked)) return addCounts(counts, { findings: [`does not open: ${looked.message}`] });
    const standing = await countStanding(writer.entries, looked);
    await looked.close();
    return addCounts(counts, standing);
  },
};
