import { DatabaseSync } from "node:sqlite";
import { afterEach, expect, it } from "vitest";
import { wrapDatabase } from "#server/stores/sqlite/database.ts";
import { followOthers } from "#server/stores/sqlite/follow-others.ts";
import { neighbourhoodCache } from "#server/stores/sqlite/neighbourhood-cache.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { aCommit, adding, aTerm, replacing } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { temporaryPath } from "#tests/support/temporary-store.ts";

const open: { close: () => Promise<void> }[] = [];
afterEach(async () => {
  for (const each of open.splice(0)) await each.close();
});

it("[S16] [S71] what others wrote is forgotten, and nothing where they only left notes", async () => {
  const path = temporaryPath();
  const other = answered(await openSqliteStore(path));
  const database = wrapDatabase(new DatabaseSync(path));
  open.push(other, database);
  const forgotten: string[] = [];
  const followed = followOthers(database, {
    ...neighbourhoodCache(),
    clear: () => forgotten.push("everything"),
    forgetTerm: (id) => forgotten.push(id),
  });
  const saw = aTerm("tool.saw");
  answered(await other.commit(aCommit(adding(saw))));
  followed.follow();
  forgotten.length = 0;
  expect(await other.leaveNotes("p1", [{ about: "chest", body: 1 }], 1000)).toBe("left");
  followed.follow();
  expect(forgotten).toEqual([]);
  answered(await other.commit(aCommit(replacing(saw, { ...saw, note: "Other." }))));
  expect(await other.leaveNotes("p1", [{ about: "chest" }], 1000)).toBe("left");
  followed.follow();
  expect(forgotten).toEqual(["tool.saw"]);
});
