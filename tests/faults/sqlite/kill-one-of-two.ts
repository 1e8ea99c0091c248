import { join } from "node:path";
import { storeFile } from "#server/open-data.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import type { Fault } from "../fault.ts";
import { killOneOfTwo } from "../kill-one-of-two.ts";
import { inTemporaryFolder } from "../temporary-folder.ts";

export const killOneOfTwoOnSqlite: Fault = {
  name: "kill-one-of-two-sqlite",
  what: "kill -9 of one of two servers on one SQLite file while clients write by both",
  times: 50,
  round: (random, kills) =>
    inTemporaryFolder((folder) =>
      killOneOfTwo({
        ...{ random, kills, ledger: join(folder, "ledger.jsonl") },
        settings: { SCRIBELINE_DATA: folder },
        open: async () => answered(await openSqliteStore(storeFile(folder))),
      }),
    ),
};
