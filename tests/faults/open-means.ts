import { openFromJars } from "#tests/support/neo4j/by-jars.ts";
import { openBySetting } from "#tests/support/neo4j/by-setting.ts";
import type { FoundNeo4j, RunningNeo4j } from "#tests/support/neo4j/found-neo4j.ts";
import type { KillableNeo4j } from "#tests/support/neo4j/start-server.ts";
import type { Means } from "./fault.ts";

const NO_NEO4J = "There is no Neo4j: it takes Java 17, Maven and openssl, or NEO4J_TEST_URL.";

/** Opens what faults ask for when they ask for it, once. */
export function openMeans(): { readonly means: Means; readonly close: () => Promise<void> } {
  let own: Promise<KillableNeo4j> | undefined;
  let named: Promise<RunningNeo4j | undefined> | undefined;
  const ownNeo4j = (): Promise<KillableNeo4j> => {
    own ??= openFromJars().then((found) => {
      if (found === undefined) throw new Error(NO_NEO4J);
      return found;
    });
    return own;
  };
  const neo4j = async (): Promise<FoundNeo4j> => {
    named ??= openBySetting();
    return (await named) ?? ownNeo4j();
  };
  return {
    means: { neo4j, ownNeo4j },
    close: async () => {
      await (await named)?.stop();
      await (await own)?.stop();
    },
  };
}
