import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { isProblem, type Problem } from "#server/domain/problem.ts";
import type { Store } from "#server/ports/store.ts";
import { readNeo4jAddress } from "#server/stores/neo4j/neo4j-address.ts";
import { openNeo4jStore } from "#server/stores/neo4j/open-neo4j-store.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { openFromJars } from "#tests/support/neo4j/by-jars.ts";
import { findProxy, openTwo } from "#tests/support/two-behind-a-proxy.ts";
import { askWithoutEnd } from "./ask-without-end.ts";
import { quantile, sayFigure } from "./figure.ts";
import type { Bench } from "./measure.ts";

const CLIENTS = 8;
const ROUNDS = Number(process.env["ROLLING_ROUNDS"] ?? 3);

/**
 * Two Scribelines over one Neo4j (with `ROLLING_STORE=file`: one file) behind the proxy of docs/deploy, under load, each restarted in turn, first as told to stop and then as
 * killed: what clients saw fail, and whether each examination that they were told of is kept, once.
 */
export const bench: Bench = async () => {
  const proxy = findProxy();
  if (proxy === undefined) {
    console.log("  not measured: no HAProxy (apt-get install haproxy, or HAPROXY names the program)");
    return [];
  }
  const place = await openPlace();
  if (place === undefined) {
    console.log("  not measured: no Neo4j (Java 17, Maven and openssl)");
    return [];
  }
  try {
    const two = await openTwo(proxy, place.settings);
    try {
      const kept = new Set<string>();
      for (const signal of ["SIGTERM", "SIGKILL"] as const) {
        const asking = askWithoutEnd(two, CLIENTS);
        await pause(2000);
        for (let round = 0; round < ROUNDS; round++)
          for (const which of [0, 1]) {
            await two.end(which, signal);
            await two.startAgain(which);
          }
        await asking.stop();
        const { answered, failed, times } = asking.seen;
        for (const id of asking.seen.kept) kept.add(id);
        console.log(
          `  ${signal}: ${2 * ROUNDS} restarts, ${times.length} requests answered (${Object.entries(answered)
            .map(([what, count]) => `${what} ${count}`)
            .join(", ")}), ${failed.length} failed`,
        );
        for (const [why, count] of Map.groupBy(failed, (each) => each))
          console.log(`    ${count.length} × ${why}`);
        for (const share of [0.5, 0.99])
          sayFigure({
            what: `${share * 100} % of the answers, ${signal}`,
            value: quantile(times, share),
            unit: "ms",
          });
      }
      await compare(() => place.open(two.folder), kept);
      const retried = two.log().filter((line) => Number(String(line["retries"]).replace("+", "")) > 0);
      console.log(`  the proxy logged ${two.log().length} requests, ${retried.length} of them tried again`);
    } finally {
      await two.stop();
    }
  } finally {
    await place.stop();
  }
  return [];
};

interface Place {
  readonly settings: Readonly<Record<string, string>>;
  /** To read what is kept; a file lies in the folder. */
  readonly open: (folder: string) => Promise<Store | Problem>;
  readonly stop: () => Promise<void>;
}

async function openPlace(): Promise<Place | undefined> {
  if (process.env["ROLLING_STORE"] === "file")
    return {
      settings: {},
      open: (folder) => openSqliteStore(join(folder, "scribeline.sqlite"), { readOnly: true }),
      stop: async () => {},
    };
  const neo4j = await openFromJars();
  if (neo4j === undefined) return undefined;
  const address = `bolt://${neo4j.user}:${neo4j.password}@${neo4j.host}/${neo4j.database}?store=rolling`;
  const place = readNeo4jAddress(address);
  if (place === undefined) throw new Error("The address of the store cannot be read");
  return {
    settings: { SCRIBELINE_STORE: address },
    open: () => openNeo4jStore(place, { readOnly: true }),
    stop: () => neo4j.stop(),
  };
}

/** Says which acknowledged examinations the store does not hold. */
async function compare(open: () => Promise<Store | Problem>, kept: ReadonlySet<string>): Promise<void> {
  const store = await open();
  if (isProblem(store)) throw new Error(store.message);
  try {
    const held = new Set<string>();
    let after: string | undefined;
    do {
      const page = await store.listExaminations({ first: 200, ...(after ? { after } : {}) });
      for (const { id } of page.rows) held.add(id);
      after = page.hasMore ? page.cursors.at(-1) : undefined;
    } while (after !== undefined);
    const lost = [...kept].filter((id) => !held.has(id));
    console.log(
      `  ${kept.size} examinations acknowledged, ${lost.length} of them lost; ${held.size} in the store, the seed's among them`,
    );
  } finally {
    await store.close();
  }
}
