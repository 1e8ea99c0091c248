import { randomUUID } from "node:crypto";
import type { Neo4jAddress } from "#server/stores/neo4j/neo4j-address.ts";
import type { FoundNeo4j } from "#tests/support/neo4j/found-neo4j.ts";

/** The address of a new store of a server, over `host` where that is another. */
export const newAddress = (server: FoundNeo4j, host = server.host): Neo4jAddress => ({
  url: `bolt://${host}`,
  ...{ user: server.user, password: server.password, database: server.database },
  store: `test-${randomUUID()}`,
});

/** As the setting has it. */
export const asSetting = ({ url, user, password, database, store }: Neo4jAddress): string =>
  `${url.replace("://", `://${user}:${password}@`)}/${database}?store=${store}`;
