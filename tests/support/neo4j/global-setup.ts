import neo4j from "neo4j-driver";
import type { TestProject } from "vitest/node";
import { id } from "#server/domain/ids.ts";
import { openNeo4jStore } from "#server/stores/neo4j/open-neo4j-store.ts";
import { aCommit, adding, aTerm } from "../build-change.ts";
import { aPiece } from "../build-piece.ts";
import { answered } from "../expect-answer.ts";
import { openInContainer } from "./by-container.ts";
import { openFromJars } from "./by-jars.ts";
import { openBySetting } from "./by-setting.ts";
import type { FoundNeo4j } from "./found-neo4j.ts";
import { PATIENCE } from "./patience.ts";
import { newAddress } from "./store-address.ts";

const MISSING =
  "the store on a Neo4j server (no NEO4J_TEST_URL, no container engine, no Java 17 with Maven and openssl). Install them: apt-get install --yes openjdk-17-jre-headless maven openssl";

/**
 * Finds a Neo4j server for the tests: one named by NEO4J_TEST_URL, else one in a container, else one from its jars. Where
 * there is none its tests are skipped and named at the end of the run; with NEO4J_REQUIRED that is a failure. All projects
 * of a run are given the same.
 */
export default async function findNeo4j({ vitest }: TestProject): Promise<(() => Promise<void>) | undefined> {
  const run = vitest.getRootProject();
  if (run.getProvidedContext().neo4j !== undefined) return undefined;
  for (const open of [openBySetting, openInContainer, openFromJars]) {
    const found = await open();
    if (found === undefined) continue;
    // What can be handed to other processes.
    const { stop, host, user, password, database, from } = found;
    const server = { host, user, password, database, from };
    try {
      await checkServer(server);
      await warmUp(server);
    } catch (failure) {
      await stop();
      throw failure;
    }
    run.provide("neo4j", server);
    return stop;
  }
  if (process.env["NEO4J_REQUIRED"]) throw new Error(`There is no Neo4j for ${MISSING}`);
  console.warn(`\nNOT RUN: ${MISSING}\n`);
  run.provide("neo4j", { missing: MISSING });
  return undefined;
}

/** What is asked of a new server first takes it seconds, which would count against the patience of the first tests. */
async function warmUp(server: FoundNeo4j): Promise<void> {
  const store = answered(await openNeo4jStore(newAddress(server), { patience: PATIENCE }));
  answered(await store.commit(aCommit(adding(aTerm("tool.saw")))));
  answered(await store.createExamination(id("examination.a"), aPiece(), "2026-11-25T10:00:00.000Z"));
  await store.close();
}

/** The tests want a database of their own, a password, and TLS for who asks for it. */
async function checkServer({ host, user, password, database, from }: FoundNeo4j): Promise<void> {
  const driver = neo4j.driver(`bolt+ssc://${host}`, neo4j.auth.basic(user, password), {
    telemetryDisabled: true,
    disableLosslessIntegers: true,
  });
  try {
    const { records } = await driver.executeQuery(
      `MATCH (n) WHERE NOT n:ScribelineMigration AND NOT coalesce(n.store, n.name, '') STARTS WITH 'test-'
       RETURN count(n) AS others`,
      {},
      { database },
    );
    if (records[0]?.get("others") !== 0)
      throw new Error(`The database of ${from} holds more than stores of tests; name an empty one.`);
  } finally {
    await driver.close();
  }
}
