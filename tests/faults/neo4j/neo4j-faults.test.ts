import { expect, inject, it } from "vitest";
import { openFromJars } from "#tests/support/neo4j/by-jars.ts";
import { onNeo4j } from "#tests/support/neo4j/on-neo4j.ts";
import type { Means } from "../fault.ts";
import { strike } from "../strike.ts";
import { cutAnywhere } from "./cut-anywhere.ts";
import { killNeo4j } from "./kill-neo4j.ts";
import { killOneOfTwoOnNeo4j } from "./kill-one-of-two.ts";

/** The same faults in number: npm run faults. */
onNeo4j(
  "a store on Neo4j loses nothing that was acknowledged, doubles nothing, and keeps nothing that was refused",
  (server) => {
    const means: Means = {
      neo4j: async () => server,
      ownNeo4j: () => Promise.reject(new Error("This fault needs a server of its own")),
    };

    it("[T4] when the connection is cut or goes silent somewhere", async () => {
      const counts = await strike(cutAnywhere, 4, means);
      expect(counts).toMatchObject({ faults: 4, findings: [] });
    });

    it("[T6] when one of two servers is killed", async () => {
      const counts = await strike(killOneOfTwoOnNeo4j, 1, means);
      expect(counts).toMatchObject({ faults: 1, findings: [] });
      expect(counts.kept).toBeGreaterThan(10);
    });

    // A server that is named, or in a container, is not ours to kill.
    it.runIf("from" in inject("neo4j") && server.from.startsWith("the jars"))(
      "[T3] [T5] when Neo4j is killed and started again, which requests meanwhile are told in time",
      async () => {
        const own = await openFromJars();
        if (own === undefined) throw new Error("There were jars for the other server");
        try {
          const counts = await strike(killNeo4j, 1, { ...means, ownNeo4j: async () => own });
          expect(counts).toMatchObject({ faults: 1, findings: [] });
          expect(counts.kept).toBeGreaterThan(10);
        } finally {
          await own.stop();
        }
      },
      120_000,
    );
  },
);
