import { openNeo4jStore } from "#server/stores/neo4j/open-neo4j-store.ts";
import { makeNew } from "#tests/support/neo4j/make-new.ts";
import { asSetting, newAddress } from "#tests/support/neo4j/store-address.ts";
import type { Fault } from "../fault.ts";
import { openAtOnce } from "../open-at-once.ts";

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
