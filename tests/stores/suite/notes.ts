import { beforeEach, describe, expect, it } from "vitest";
import { LONGEST_NOTE } from "#server/ports/notes.ts";
import type { Store } from "#server/ports/store.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { dumpOf } from "#tests/support/read-all.ts";

/** Rule S71: what processes say for a short while, beside everything else. */
export function noteGroup(open: () => Promise<Store>): void {
  describe("notes", () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });
    const leave = async (by: string, notes: Readonly<Record<string, unknown>>, life = LONGEST_NOTE) =>
      expect(
        await store.leaveNotes(
          by,
          Object.entries(notes).map(([about, body]) => (body === undefined ? { about } : { about, body })),
          life,
        ),
      ).toBe("left");

    it("[S71] are read by what they are about, whoever said them", async () => {
      await leave("p2", { chest: { who: ["b", "a"], count: 2 }, table: 1.5 });
      await leave("p1", { chest: "seen", chair: [true, "a"] });
      expect(await store.notesAbout(["table", "chest", "none", "chest"])).toEqual([
        { about: "chest", by: "p1", body: "seen" },
        { about: "chest", by: "p2", body: { who: ["b", "a"], count: 2 } },
        { about: "table", by: "p2", body: 1.5 },
      ]);
      expect(await store.notesAbout([])).toEqual([]);
      expect(Object.isFrozen((await store.notesAbout(["chair"]))[0]?.body)).toBe(true);
    });

    it("[S71] stand in place of what the same process said before, and are taken back", async () => {
      await leave("p1", { chest: "first", table: "first" });
      await leave("p2", { chest: "other" });
      await leave("p1", { chest: "second", table: undefined, none: undefined });
      const all = await store.notesAbout(["chest", "table", "none"]);
      expect(all.map(({ by, body }) => [by, body])).toEqual([
        ["p1", "second"],
        ["p2", "other"],
      ]);
    });

    it("[S71] hold for as long as was said", async () => {
      await leave("p1", { chest: "short", table: "short" }, 400);
      await leave("p2", { chest: "long" });
      const bodies = async () => (await store.notesAbout(["chest", "table"])).map(({ body }) => body);
      await expect.poll(bodies).toEqual(["long"]);
      await leave("p1", { chest: "again" });
      expect(await bodies()).toEqual(["again", "long"]);
      for (const life of [0, LONGEST_NOTE + 1, 0.5])
        await expect(store.leaveNotes("p1", [{ about: "chest", body: "x" }], life)).rejects.toThrow(
          RangeError,
        );
    });

    it("[S71] leave ledger, dump, hashes and numbers as they were, and do not go with them", async () => {
      answered(await store.commit(aCommit(adding(aTerm("tool.saw")))));
      const before = [await dumpOf(store), await store.verify(), await store.newestWrite()];
      await leave("p1", { chest: "seen" });
      expect([await dumpOf(store), await store.verify(), await store.newestWrite()]).toEqual(before);
      const other = await open();
      answered(await other.restore(store.dump()));
      expect(await other.notesAbout(["chest"])).toEqual([]);
    });

    it("[S71] do not keep a new store from being restored into", async () => {
      answered(await store.commit(aCommit(adding(aTerm("tool.saw")))));
      const other = await open();
      expect(await other.leaveNotes("p1", [{ about: "chest", body: "seen" }], LONGEST_NOTE)).toBe("left");
      answered(await other.restore(store.dump()));
      expect(await dumpOf(other)).toEqual(await dumpOf(store));
    });
  });
}
