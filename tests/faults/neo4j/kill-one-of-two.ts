import { join } from "node:path";
import { openNeo4jStore } from "#server/stores/neo4j/open-neo4j-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { asSetting, newAddress } from "#tests/support/neo4j/store-address.ts";
import type { Fault } from "../fault.ts";
import { killOneOfTwo } from "../kill-one-of-two.ts";
import { inTemporaryFolder } from "../temporary-folder.ts";

export const killOneOfTwoOnNeo4j: Fault = {
  name: "kill-one-of-two-neo4j",
  what: "kill -9 of one of two servers on one Neo4j while clients write by both",
  times: 50,
  round: (random, kills, { neo4j }) =>
    inTemporaryFolder(async (folder) => {
      const address = newAddress(await neo4j());
      return killOneOfTwo({
        ...{ random, kills, ledger: join(folder, "ledger.jsonl") },
        settings: { SCRIBELINE_STORE: asSetting(address) },
        open: async () => answered(await openNeo4jStore(address)),
      });
    }),
};
