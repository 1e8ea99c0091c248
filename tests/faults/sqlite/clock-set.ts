import { storeFile } from "#server/open-data.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { setClock } from "../clock-set.ts";
import type { Fault } from "../fault.ts";
import { inTemporaryFolder } from "../temporary-folder.ts";

export const clockSetOnSqlite: Fault = {
  name: "clock-set-sqlite",
  what: "the clock of a server set back or forward, by seconds to a year, while clients write to a SQLite file",
  times: 200,
  round: (random, sets) =>
    inTemporaryFolder((folder) =>
      setClock({
        ...{ random, sets, folder, settings: { SCRIBELINE_DATA: folder } },
        open: async () => answered(await openSqliteStore(storeFile(folder))),
      }),
    ),
};
