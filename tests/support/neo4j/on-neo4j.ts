import { appendFileSync } from "node:fs";
import neo4j, { type Driver } from "neo4j-driver";
import { describe, inject } from "vitest";
import type { Store } from "#server/ports/store.ts";
import type { ConnectOptions } from "#server/stores/neo4j/connect.ts";
import type { Neo4jAddress } from "#server/stores/neo4j/neo4j-address.ts";
import { openNeo4jStore } from "#server/stores/neo4j/open-neo4j-store.ts";
import { MISSING_MEANS } from "../closing-line.ts";
import { answered } from "../expect-answer.ts";
import type { FoundNeo4j } from "./found-neo4j.ts";
import { PATIENCE } from "./patience.ts";
import { type AddressParts, newAddress } from "./store-address.ts";

/** A server that the tests were given, and what they do with it. */
export interface OnNeo4j extends FoundNeo4j {
  /** The address of a store: a new one unless it is named. */
  readonly address: (parts?: AddressParts) => Neo4jAddress;
  /** Opens a new store, or one that there is. */
  readonly open: (address?: Neo4jAddress, options?: Partial<ConnectOptions>) => Promise<Store>;
  /** Runs a statement beside the store. */
  readonly run: (cypher: string, parameters?: object) => Promise<readonly Record<string, unknown>[]>;
}

/** Tests that need a Neo4j server. Without one they are skipped, and named at the end of the run. */
export function onNeo4j(name: string, tests: (server: OnNeo4j) => void): void {
  const found = inject("neo4j");
  if ("missing" in found) {
    appendFileSync(MISSING_MEANS, `${found.missing}\n`);
    describe.skip(name, () => tests(workOn({ host: "", user: "", password: "", database: "", from: "" })));
  } else describe(name, () => tests(workOn(found)));
}

/** What tests do with a server that they started themselves. */
export function workOn(server: FoundNeo4j): OnNeo4j {
  const { database } = server;
  const address: OnNeo4j["address"] = (parts) => newAddress(server, parts);
  return {
    ...server,
    address,
    open: async (where = address(), options = {}) =>
      answered(await openNeo4jStore(where, { patience: PATIENCE, ...options })),
    run: async (cypher, parameters = {}) => {
      const driver = driverOf(server);
      try {
        const { records } = await driver.executeQuery(cypher, parameters, { database });
        return records.map((record) => record.toObject());
      } finally {
        await driver.close();
      }
    },
  };
}

const driverOf = ({ host, user, password }: FoundNeo4j): Driver =>
  neo4j.driver(`bolt://${host}`, neo4j.auth.basic(user, password), {
    telemetryDisabled: true,
    disableLosslessIntegers: true,
  });
