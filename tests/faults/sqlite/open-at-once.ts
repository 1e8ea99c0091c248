import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { gunzipSync } from "node:zlib";
import { storeFile } from "#server/open-data.ts";
import { MIGRATIONS } from "#server/stores/sqlite/migrations.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import type { Fault } from "../fault.ts";
import { openAtOnce } from "../open-at-once.ts";
import { inTemporaryFolder } from "../temporary-folder.ts";

const KEPT = fileURLToPath(new URL("../../stores/sqlite/kept", import.meta.url));

export const openAtOnceOnSqlite: Fault = {
  name: "open-at-once-sqlite",
  what: "two programs seed a new SQLite file, or bring one of an earlier version up to date, at once; one in three times one is killed",
  times: 50,
  round: (random) =>
    inTemporaryFolder(async (folder) => {
      const isNew = random.chance(0.5);
      const version = 1 + random.below(Math.max(1, MIGRATIONS.length - 1));
      if (!isNew)
        writeFileSync(storeFile(folder), gunzipSync(readFileSync(`${KEPT}/version-${version}.sqlite.gz`)));
      return openAtOnce({
        ...{ random, isNew, settings: { SCRIBELINE_DATA: folder } },
        open: () => openSqliteStore(storeFile(folder)),
      });
    }),
};
