import neo4j from "neo4j-driver";
import type { FoundNeo4j } from "./found-neo4j.ts";

/** Takes everything out of a database that is ours alone, its rules too. */
export async function makeNew({ host, user, password, database }: FoundNeo4j): Promise<void> {
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
