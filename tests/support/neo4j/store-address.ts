import { randomUUID } from "node:crypto";
import type { Neo4jAddress } from "#server/stores/neo4j/neo4j-address.ts";
import type { FoundNeo4j } from "./found-neo4j.ts";

/** What of an address is another than usual. */
export interface AddressParts {
  readonly scheme?: string;
  readonly host?: string;
  readonly store?: string;
}

/** The address of a store of a server: a new one unless it is named. */
export const newAddress = (
  server: FoundNeo4j,
  { scheme = "bolt", host = server.host, store = `test-${randomUUID()}` }: AddressParts = {},
): Neo4jAddress => ({
  url: `${scheme}://${host}`,
  ...{ user: server.user, password: server.password, database: server.database },
  store,
});

/** As the setting has it. */
export const asSetting = ({ url, user, password, database, store }: Neo4jAddress): string =>
  `${url.replace("://", `://${encodeURIComponent(user)}:${encodeURIComponent(password)}@`)}/${database}?store=${store}`;
