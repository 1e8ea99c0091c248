import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { Wishes } from "#server/generator/graph-plan.ts";
import type { Store } from "#server/ports/store.ts";
import type { Neo4jAddress } from "#server/stores/neo4j/neo4j-address.ts";
import { openNeo4jStore } from "#server/stores/neo4j/open-neo4j-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { openFromJars } from "#tests/support/neo4j/by-jars.ts";
import type { RunningNeo4j } from "#tests/support/neo4j/found-neo4j.ts";
import { folderOf } from "./bench-graph.ts";

/**
 * A server with memory as in earnest (`BENCH_NEO4J_HEAP`), whose data stay for the next run; none where there is no Java,
 * or where `BENCH_NEO4J=no` says that the rest is to be measured without it.
 */
export async function openBenchNeo4j(
  wishes: Wishes,
  holds: "store" | "question",
): Promise<RunningNeo4j | undefined> {
  if (process.env["BENCH_NEO4J"] === "no") return undefined;
  const home = join(folderOf(wishes), `neo4j-${holds}`);
  mkdirSync(home, { recursive: true });
  const heap = process.env["BENCH_NEO4J_HEAP"] || "2g";
  return openFromJars({}, { heap, pages: "1g", home });
}

/** The store of the graph on the server, filled from another where it is empty. */
export async function storeOn(server: RunningNeo4j, from: Store): Promise<Store> {
  const { host, user, password, database } = server;
  const address: Neo4jAddress = { url: `bolt://${host}`, user, password, database, store: "bench" };
  const store = answered(await openNeo4jStore(address, { patience: 600_000 }));
  if ((await store.newestRevision()) === undefined) {
    const start = performance.now();
    answered(await store.restore(from.dump()));
    console.log(`  restored into Neo4j in ${((performance.now() - start) / 1000).toFixed(0)} s`);
  }
  return store;
}
