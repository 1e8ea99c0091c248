import { afterAll, describe, expect, inject, it } from "vitest";
import { openFromJars } from "#tests/support/neo4j/by-jars.ts";
import { onNeo4j } from "#tests/support/neo4j/on-neo4j.ts";
import type { KillableNeo4j } from "#tests/support/neo4j/start-server.ts";
import type { Means } from "../fault.ts";
import { strike } from "../strike.ts";
import { clockSetOnNeo4j } from "./clock-set.ts";
import { cutAnywhere } from "./cut-anywhere.ts";
import { killNeo4j } from "./kill-neo4j.ts";
import { killOneOfTwoOnNeo4j } from "./kill-one-of-two.ts";
import { liveOverRestart } from "./live-over-restart.ts";
import { openAtOnceOnNeo4j } from "./open-at-once.ts";
import { slowNeo4j } from "./slow-neo4j.ts";

/** The same faults in number: npm run faults. */
onNeo4j(
  "a store on Neo4j loses nothing that was acknowledged, doubles nothing, and keeps nothing that was refused",
  (server) => {
    let own: Promise<KillableNeo4j> | undefined;
    const means: Means = {
      neo4j: async () => server,
      ownNeo4j: () => {
        own ??= openFromJars().then((found) => {
          if (found === undefined) throw new Error("There were jars for the other server");
          return found;
        });
        return own;
      },
    };
    afterAll(async () => (await own)?.stop());

    it("[T4] when the connection is cut or goes silent somewhere", async () => {
      const counts = await strike(cutAnywhere, 3, means);
      expect(counts).toMatchObject({ faults: 3, findings: [] });
    });

    it("[T6] when one of two servers is killed", async () => {
      const counts = await strike(killOneOfTwoOnNeo4j, 1, means);
      expect(counts).toMatchObject({ faults: 1, findings: [] });
      expect(counts.kept).toBeGreaterThan(10);
    });

    it("[T5] when it is slow or silent, which requests are told in time", async () => {
      const counts = await strike(slowNeo4j, 1, means);
      expect(counts).toMatchObject({ faults: 1, findings: [] });
    });

    it("[T10] when the clock is set", async () => {
      const counts = await strike(clockSetOnNeo4j, 3, means);
      expect(counts).toMatchObject({ faults: 3, findings: [] });
    });

    // A server that is named, or in a container, is not ours to kill.
    describe.runIf("from" in inject("neo4j") && server.from.startsWith("the jars"))(
      "on a server of its own",
      () => {
        it("[T3] [T5] when Neo4j is killed and started again, which requests meanwhile are told in time", async () => {
          const counts = await strike(killNeo4j, 1, means);
          expect(counts).toMatchObject({ faults: 1, findings: [] });
          expect(counts.kept).toBeGreaterThan(10);
        });

        it("[Z4] [Z5] when Neo4j is killed and started again, and live connections stay open and are told of all that is kept", async () => {
          const { made, told, closings } = await liveOverRestart(
            await (means.ownNeo4j as () => Promise<KillableNeo4j>)(),
          );
          expect(made.length).toBe(6);
          expect(told.filter((id) => made.includes(id ?? ""))).toEqual(made);
          expect(closings).toEqual([]);
        });

        it("[T11] when two programs prepare and seed it at once", async () => {
          const counts = await strike(openAtOnceOnNeo4j, 1, means);
          expect(counts).toMatchObject({ faults: 1, findings: [] });
        });
      },
    );
  },
);
