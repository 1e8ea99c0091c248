import { expect, it } from "vitest";
import { openFile } from "#server/stores/sqlite/open-file.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { WALK } from "#server/stores/sqlite/walk.ts";
import { aCommit } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { largeGraph } from "#tests/support/large-graph.ts";
import { temporaryPath } from "#tests/support/temporary-store.ts";

it.each(["without statistics", "with statistics"])(
  "[S14] the walk searches by what it stands on and never goes through a whole table, %s",
  async (statistics) => {
    const path = temporaryPath();
    const store = answered(await openSqliteStore(path));
    answered(await store.commit(aCommit(largeGraph(2_000).change)));
    await store.close();
    const database = answered(await openFile(path, { readOnly: false, patience: 0 }));
    if (statistics === "with statistics") database.raw.exec("ANALYZE");
    const plan = database.all<{ detail: string }>(`EXPLAIN QUERY PLAN ${WALK}`).map(({ detail }) => detail);
    await database.close();

    const tables = ["term", "lead", "statement", "exception", "claim", "naming", "source", "revision"];
    const steps = plan.filter((detail) => tables.some((table) => detail.split(" ")[1] === table));
    expect(steps.filter((detail) => !detail.startsWith("SEARCH"))).toEqual([]);
    expect(new Set(steps.map((detail) => detail.replace(" EXISTS", "")))).toEqual(
      new Set([
        "SEARCH term USING INDEX term_by_id (id=? AND since<?)",
        "SEARCH term USING INDEX term_by_broader (broader=?)",
        "SEARCH lead USING PRIMARY KEY (subject=?)",
        "SEARCH statement USING PRIMARY KEY (subject=?)",
        "SEARCH exception USING PRIMARY KEY (of=?)",
      ]),
    );
  },
);
