import { onNeo4j } from "#tests/support/neo4j/on-neo4j.ts";
import { severalServers } from "../several-servers.ts";

onNeo4j("on a Neo4j server", (server) =>
  severalServers("a database that is new", async () => {
    await server.run("MATCH (n) CALL (n) { DETACH DELETE n }");
    for (const { name } of await server.run("SHOW CONSTRAINTS YIELD name"))
      await server.run(`DROP CONSTRAINT ${name}`);
    for (const { name } of await server.run("SHOW INDEXES YIELD name, type WHERE type = 'RANGE' RETURN name"))
      await server.run(`DROP INDEX ${name}`);
    const address = server.address();
    const { user, password, database, store } = address;
    const [scheme, host] = address.url.split("://");
    const url = `${scheme}://${encodeURIComponent(user)}:${encodeURIComponent(password)}@${host}/${database}?store=${store}`;
    return { env: { SCRIBELINE_STORE: url }, open: () => server.open(address) };
  }),
);
