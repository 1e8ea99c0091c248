import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync, type SQLInputValue } from "node:sqlite";
import { printGraph } from "#server/generator/print-graph.ts";
import { importFile } from "#server/importing/import-file.ts";
import { moveBetween } from "#server/keeping/move-between.ts";
import { MIGRATIONS } from "#server/stores/sqlite/migrations.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { sayFigure } from "./figure.ts";
import type { Bench } from "./measure.ts";

const CLAIMS = 100_000;
const TABLES = ["revision", "term", "claim", "source", "statement", "lead", "exception", "naming"];
const quiet = (): void => {};

/** Milliseconds that the processor worked: times of the clock say more of what else runs. */
async function worked(what: () => unknown): Promise<number> {
  const begun = process.cpuUsage();
  await what();
  const { user, system } = process.cpuUsage(begun);
  return (user + system) / 1000;
}

/** All rows of a store put into an empty one, table by table, with nothing looked at or worked out. */
function insertBare(from: string, to: string): () => void {
  const source = new DatabaseSync(from, { readOnly: true });
  const rows = TABLES.map((table) => {
    const select = source.prepare(`SELECT * FROM ${table}`);
    select.setReturnArrays(true);
    return [table, select.all() as unknown as readonly SQLInputValue[][]] as const;
  });
  source.close();
  return () => {
    const target = new DatabaseSync(to);
    target.exec("PRAGMA journal_mode = wal; PRAGMA synchronous = full; PRAGMA cache_size = -65536");
    for (const migration of MIGRATIONS) target.exec(migration);
    for (const [table, some] of rows) {
      if (some.length === 0) continue;
      const insert = target.prepare(`INSERT INTO ${table} VALUES (${some[0]?.map(() => "?").join(", ")})`);
      target.exec("BEGIN");
      for (const row of some) insert.run(...row);
      target.exec("COMMIT");
    }
    target.close();
  };
}

/** An import into a file, and a move from file to file, against the bare insertion of the same rows. */
export const bench: Bench = async () => {
  const folder = mkdtempSync(join(tmpdir(), "scribeline-bench-"));
  try {
    const file = join(folder, "file.jsonl");
    const wishes = { claims: CLAIMS, claimsATerm: 4, seed: 1, examinations: 0 };
    writeFileSync(file, [...printGraph(wishes)].join(""));
    const path = join(folder, "one.sqlite");
    const store = answered(await openSqliteStore(path));
    const options = {
      ...{ by: "a bench", message: "measured", mayReplace: false, now: () => new Date(), tell: quiet },
    };
    const dry = await worked(() => importFile(store, file, { ...options, isDry: true }));
    const imported = await worked(() => importFile(store, file, { ...options, isDry: false }));
    const again = await worked(() => importFile(store, file, { ...options, isDry: false }));
    const bare = await worked(insertBare(path, join(folder, "bare.sqlite")));
    const other = answered(await openSqliteStore(join(folder, "two.sqlite")));
    const moved = await worked(async () => answered(await moveBetween(store, other, quiet)));
    await other.close();
    await store.close();
    sayFigure({ what: `looking a file of ${CLAIMS} claims through, work`, value: dry / 1000, unit: "s" });
    sayFigure({ what: "importing it, that look included", value: imported / 1000, unit: "s" });
    sayFigure({
      what: "memory of the process at most",
      value: process.resourceUsage().maxRSS / 1000,
      unit: "MB",
    });
    const against = "the bare insertion of the same rows";
    return [
      { what: `importing ${CLAIMS} claims`, against, cost: imported, costAgainst: bare, atMost: 8 },
      {
        what: "importing the same again",
        against: "the first time",
        cost: again,
        costAgainst: imported,
        atMost: 0.7,
      },
      {
        what: "moving them to another file and comparing",
        against,
        cost: moved,
        costAgainst: bare,
        atMost: 6,
      },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
