import neo4j, { type ProfiledPlan } from "neo4j-driver";
import { expect, it } from "vitest";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { readStatement } from "#server/stores/neo4j/read-at.ts";
import { CLAIMS_AND_TERMS, walk } from "#server/stores/neo4j/walk.ts";
import { aCommit } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { largeGraph } from "#tests/support/large-graph.ts";
import { onNeo4j } from "#tests/support/neo4j/on-neo4j.ts";

const leavesOf = (plan: ProfiledPlan): readonly string[] =>
  plan.children.length === 0 ? [plan.operatorType] : plan.children.flatMap(leavesOf);
const hitsOf = (plan: ProfiledPlan): number =>
  plan.dbHits + plan.children.reduce((sum, child) => sum + hitsOf(child), 0);

onNeo4j("the walk on a Neo4j server", (server) => {
  it("[S14] starts from unique indexes and looks at what it reaches only, and equals that in memory", async () => {
    const graph = largeGraph(6_000);
    const memory = openMemoryStore();
    answered(await memory.commit(aCommit(graph.change)));
    const address = server.address();
    const store = await server.open(address);
    answered(await store.restore(memory.dump()));
    const seeds = (graph.features[0] ?? []).slice(0, 20);
    const ask = { seeds, regions: graph.leafRegions.slice(0, 2), maxDepth: 6 };
    const found = await store.neighbourhood(ask);
    expect(found.claims.length).toBeGreaterThan(50);
    expect(found).toEqual(await memory.neighbourhood(ask));

    const driver = neo4j.driver(`bolt://${server.host}`, neo4j.auth.basic(server.user, server.password), {
      telemetryDisabled: true,
      disableLosslessIntegers: true,
    });
    const profile = async (statement: string): Promise<ProfiledPlan> => {
      const { summary } = await driver.executeQuery(
        `PROFILE ${statement}`,
        {
          ...{ store: address.store, at: null, seeds, regions: ask.regions, everywhere: false },
          reached: [...found.depths.keys()],
        },
        { database: server.database },
      );
      if (summary.profile === false) throw new Error("There is no profile");
      return summary.profile;
    };
    for (const statement of [walk(6), CLAIMS_AND_TERMS]) {
      const plan = await profile(readStatement(statement));
      expect(new Set(leavesOf(plan).map((leaf) => leaf.split("@")[0]))).toEqual(
        new Set(["NodeUniqueIndexSeek", "Argument"]),
      );
      expect(hitsOf(plan)).toBeLessThan(200_000);
    }
    await driver.close();
    await store.close();
  });
});
