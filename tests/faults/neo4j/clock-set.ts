import { openNeo4jStore } from "#server/stores/neo4j/open-neo4j-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { asSetting, newAddress } from "#tests/support/neo4j/store-address.ts";
import { setClock } from "../clock-set.ts";
import type { Fault } from "../fault.ts";
import { inTemporaryFolder } from "../temporary-folder.ts";

export const clockSetOnNeo4j: Fault = {
  name: "clock-set-neo4j",
  what: "the clock of a server set back or forward, by seconds to a year, while clients write to Neo4j",
  times: 100,
  round: (random, sets, { neo4j }) =>
    inTemporaryFolder(async (folder) => {
      const address = newAddress(await neo4j());
      return setClock({
        ...{ random, sets, folder, settings: { SCRIBELINE_STORE: asSetting(address) } },
        open: async () => answered(await openNeo4jStore(address)),
      });
    }),
};
