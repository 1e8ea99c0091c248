import { afterEach, describe } from "vitest";
import type { Store } from "#server/ports/store.ts";
import { cardGroup } from "./suite/cards.ts";
import { dumpGroup } from "./suite/dumps.ts";
import { examinationGroup } from "./suite/examinations.ts";
import { historyGroup } from "./suite/history.ts";
import { listGroup } from "./suite/lists.ts";
import { modelGroup } from "./suite/model.ts";
import { neighbourhoodGroup } from "./suite/neighbourhood.ts";
import { noteGroup } from "./suite/notes.ts";
import { revisionGroup } from "./suite/revisions.ts";
import { searchGroup } from "./suite/search.ts";
import { walkBlockGroup } from "./suite/walk-blocks.ts";
import { writeGroup } from "./suite/writes.ts";

/**
 * The contract of `server/ports/store.ts`, to be run on every adapter; nothing else tests a store's behaviour. `open`
 * gives an empty store each time. `runs` is how many random cases each law is tried on.
 */
export function storeSuite(name: string, open: () => Promise<Store>, runs = 100): void {
  describe(`store: ${name}`, () => {
    const opened: Store[] = [];
    const openAndKeep = async (): Promise<Store> => {
      const store = await open();
      opened.push(store);
      return store;
    };
    afterEach(async () => {
      for (const store of opened.splice(0)) await store.close();
    });
    revisionGroup(openAndKeep);
    historyGroup(openAndKeep, runs);
    listGroup(openAndKeep);
    neighbourhoodGroup(openAndKeep, runs);
    walkBlockGroup(openAndKeep, runs);
    searchGroup(openAndKeep);
    examinationGroup(openAndKeep);
    writeGroup(openAndKeep);
    cardGroup(openAndKeep);
    noteGroup(openAndKeep);
    dumpGroup(openAndKeep, runs);
    modelGroup(openAndKeep, runs);
  });
}
