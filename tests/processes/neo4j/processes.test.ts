import { makeNew } from "#tests/support/neo4j/make-new.ts";
import { onNeo4j } from "#tests/support/neo4j/on-neo4j.ts";
import { asSetting } from "#tests/support/neo4j/store-address.ts";
import { severalServers } from "../several-servers.ts";

onNeo4j("on a Neo4j server", (server) =>
  severalServers("a database that is new", async () => {
    await makeNew(server);
    const address = server.address();
    return { env: { SCRIBELINE_STORE: asSetting(address) }, open: () => server.open(address) };
  }),
);
