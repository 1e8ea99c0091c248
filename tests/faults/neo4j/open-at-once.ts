import neo4j from "neo4j-driver";
import { openNeo4jStore } from "#server/stores/neo4j/open-neo4j-store.ts";
import type { FoundNeo4j } from "#tests/support/neo4j/found-neo4j.ts";
import type { Fault } from "../fault.ts";
import { openAtOnce } from "../open-at-once.ts";
import { asSetting, newAddress } from "./store-address.ts";

export const openAtOnceOnNeo4j: Fault = {
  name: "open-at-once-neo4j",
  what: "two programs prepare a new Neo4j database and seed a store in it at once; one in three times one is killed",
  times: 50,
  round: async (random, _, { ownNeo4j }) => {
    const server = await ownNeo4j();
    await makeNew(server);
    const address = newAddress(server);
    return openAtOnce({
      ...{ random, isNew: true, settings: { SCRIBELINE_STORE: asSetting(address) } },
      open: () => openNeo4jStore(address),
    });
  },
};

/** Takes everything out of a database that is ours alone, its rules too. */
async function makeNew({ host, user, password, database }: FoundNeo4j): Promise<void> {
  const driver = neo4j.driver(`bolt://${host}`, neo4j.auth.basic(user, password), {
    telemetryDisabled: true,
  });
  const run = async (cypher: string): Promise<readonly string[]> =>
    (await driver.executeQuery(cypher, {}, { database })).records.map((record) => String(record.get(0)));
  const session = driver.session({ database });
  await session.run("MATCH (n) CALL (n) { DETACH DELETE n } IN TRANSACTIONS OF 5000 ROWS");
  await session.close();
  for (const name of await run("SHOW CONSTRAINTS YIELD name RETURN name"))
    await run(`DROP CONSTRAINT ${name}`);
  for (const name of await run("SHOW INDEXES YIELD name, type WHERE type <> 'LOOKUP' RETURN name"))
    await run(`DROP INDEX ${name}`);
  await driver.close();
}
