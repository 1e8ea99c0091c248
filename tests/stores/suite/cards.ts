import { beforeEach, describe, expect, it } from "vitest";
import type { CardWrite } from "#server/domain/card.ts";
import type { Deed } from "#server/domain/deed.ts";
import { id } from "#server/domain/ids.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered, refusedWith } from "#tests/support/expect-answer.ts";
import { dumpOf } from "#tests/support/read-all.ts";

const at = "2026-11-25T10:00:00.000Z";
const deed = (did: string): Deed => ({ by: "person.a", at, did });
const talk = (name: string, on: readonly string[], expectedVersion = 0, text = name): CardWrite => ({
  ...{ kind: "comment", id: name, expectedVersion },
  next: { keys: { on }, body: { text } },
});
const away = (name: string, expectedVersion: number): CardWrite => ({
  ...{ kind: "comment", id: name, expectedVersion },
});

/** Rules S67 and S68: cards, and the ledger that tells of all writes. */
export function cardGroup(open: () => Promise<Store>): void {
  describe("cards", () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });
    const write = async (...cards: readonly CardWrite[]) =>
      store.writeCards({ cards, deed: deed("write comments") });
    const listed = async (value: string, order: "up" | "down" = "up") => {
      const page = await store.listCards(
        { kind: "comment", key: { name: "on", value } },
        { first: 9 },
        order,
      );
      return page.rows.map((card) => card.id);
    };

    it("[S67] are found by kind and id, and by each value of their keys", async () => {
      answered(await write(talk("b", ["x", "y"]), talk("a", ["x", "x"]), talk("c", [])));
      const card = { kind: "comment", id: "b", version: 1, keys: { on: ["x", "y"] }, body: { text: "b" } };
      expect(await store.card("comment", "b")).toEqual(card);
      expect(Object.isFrozen((await store.card("comment", "b"))?.keys)).toBe(true);
      expect(await store.card("comment", "none")).toBeUndefined();
      expect(await store.card("other", "b")).toBeUndefined();
      expect([...(await store.cards("comment", ["c", "none", "a", "a"])).keys()]).toEqual(["a", "c"]);
      expect(await listed("x")).toEqual(["a", "b"]);
      expect(await listed("x", "down")).toEqual(["b", "a"]);
      expect(await listed("y")).toEqual(["b"]);
      expect(await listed("z")).toEqual([]);
      expect((await store.listCards({ kind: "comment" }, { first: 9 })).total).toBe(3);
    });

    it("[S67] are listed page by page, upwards and downwards", async () => {
      answered(await write(...["a", "b", "c", "d", "e"].map((name) => talk(name, ["x"]))));
      for (const order of ["up", "down"] as const) {
        const found: string[] = [];
        for (let after: string | undefined, isMore = true; isMore; ) {
          const page = await store.listCards(
            { kind: "comment" },
            { first: 2, ...(after === undefined ? {} : { after }) },
            order,
          );
          expect(page.total).toBe(5);
          found.push(...page.rows.map((card) => card.id));
          after = page.cursors.at(-1);
          isMore = page.hasMore;
        }
        expect(found).toEqual(order === "up" ? ["a", "b", "c", "d", "e"] : ["e", "d", "c", "b", "a"]);
      }
      await expect(store.listCards({ kind: "comment" }, { first: 0 })).rejects.toThrow(RangeError);
    });

    it("[S67] are changed on the version that stands, and found by their new keys alone", async () => {
      answered(await write(talk("a", ["x"])));
      expect(refusedWith(await write(talk("a", ["y"])))).toBe("CHANGED_MEANWHILE");
      expect(refusedWith(await write(talk("a", ["y"], 2)))).toBe("CHANGED_MEANWHILE");
      expect(refusedWith(await write(talk("b", ["y"], 1)))).toBe("CHANGED_MEANWHILE");
      answered(await write(talk("a", ["y"], 1, "again")));
      expect(await store.card("comment", "a")).toMatchObject({ version: 2, body: { text: "again" } });
      expect([await listed("x"), await listed("y")]).toEqual([[], ["a"]]);
    });

    it("[S67] are taken away with their keys and content, and can be written anew", async () => {
      answered(await write(talk("a", ["x"])));
      expect(refusedWith(await write(away("a", 2)))).toBe("CHANGED_MEANWHILE");
      answered(await write(away("a", 1)));
      expect(await store.card("comment", "a")).toBeUndefined();
      expect(await listed("x")).toEqual([]);
      expect(JSON.stringify(await dumpOf(store))).not.toContain('"text"');
      answered(await write(talk("a", ["x"])));
      expect(await store.card("comment", "a")).toMatchObject({ version: 1 });
      answered(await store.verify());
    });

    it("[S67] are written all or none, and each after the one before it", async () => {
      expect(refusedWith(await write(talk("a", ["x"]), talk("b", ["x"], 1)))).toBe("CHANGED_MEANWHILE");
      expect((await store.listCards({ kind: "comment" }, { first: 9 })).total).toBe(0);
      expect(await store.newestWrite()).toBe(0);
      answered(await write(talk("a", ["x"]), talk("a", ["y"], 1), talk("b", []), away("b", 1)));
      expect(await store.card("comment", "a")).toMatchObject({ version: 2 });
      expect(await store.card("comment", "b")).toBeUndefined();
      answered(await store.verify());
    });

    it("[S67] go with a commit or an examination, all or none", async () => {
      const saw = aCommit(adding(aTerm("tool.saw")));
      expect(refusedWith(await store.commit({ ...saw, cards: [talk("a", [], 1)] }))).toBe(
        "CHANGED_MEANWHILE",
      );
      expect(await store.newestRevision()).toBeUndefined();
      const chest = id<"examination">("examination.chest");
      expect(refusedWith(await store.createExamination(chest, aPiece(), at, { cards: [away("a", 1)] }))).toBe(
        "CHANGED_MEANWHILE",
      );
      expect(await store.examination(chest)).toBeUndefined();
      answered(await store.commit({ ...saw, cards: [talk("a", [])], deed: deed("accept") }));
      answered(
        await store.createExamination(chest, aPiece(), at, { cards: [talk("b", [])], deed: deed("record") }),
      );
      const along = { cards: [talk("a", ["x"], 1)], deed: deed("change") };
      answered(await store.changeExamination(chest, 1, aPiece(), at, along));
      answered(await store.undoExamination(chest, 2, at, { deed: deed("undo") }));
      answered(await store.deleteExamination(chest, 3, at, { cards: [away("b", 1)] }));
      expect((await store.listCards({ kind: "comment" }, { first: 9 })).rows).toMatchObject([{ version: 2 }]);
      expect((await store.writesAfter(0, 9)).map((written) => written.deed?.did)).toEqual([
        ...["accept", "record", "change", "undo"],
        undefined,
      ]);
      answered(await store.verify());
    });

    it("[S68] the ledger names every write with who did it and which cards it left, chained by hashes", async () => {
      answered(await write(talk("a", ["x"]), talk("b", [])));
      answered(await store.commit({ ...aCommit(adding(aTerm("tool.saw"))), deed: deed("commit") }));
      answered(await write(away("b", 1)));
      const nothing = answered(await store.writeCards({ deed: deed("be refused a sign-in") }));
      const ledger = await store.writesAfter(0, 9);
      expect(ledger.at(-1)).toEqual(nothing);
      expect(ledger).toMatchObject([
        {
          sequence: 1,
          cards: [{ kind: "comment", id: "a", version: 1 }, { id: "b" }],
          previous: "0".repeat(64),
        },
        { sequence: 2, revision: 1, deed: { by: "person.a", at, did: "commit" } },
        { sequence: 3, cards: [{ kind: "comment", id: "b", version: 1 }] },
        { sequence: 4, deed: { did: "be refused a sign-in" } },
      ]);
      expect(ledger[2]?.cards?.[0]).not.toHaveProperty("hash");
      expect(ledger.slice(1).map(({ previous }) => previous)).toEqual(
        ledger.slice(0, 3).map(({ hash }) => hash),
      );
    });

    it("[S8] [S68] cards and ledger move with a dump, and the ledger goes on from there", async () => {
      answered(await write(talk("b", ["x", "y"]), talk("a", [])));
      answered(await store.createExamination(id("examination.z"), aPiece(), at, { deed: deed("record") }));
      answered(await write(talk("a", ["x"], 1)));
      const dump = await dumpOf(store);
      const other = openMemoryStore();
      answered(await other.restore(dump));
      const third = await open();
      answered(await third.restore(other.dump()));
      expect(await dumpOf(third)).toEqual(dump);
      expect(await third.writesAfter(0, 9)).toEqual(await store.writesAfter(0, 9));
      const page = await third.listCards({ kind: "comment", key: { name: "on", value: "x" } }, { first: 9 });
      expect(page.rows.map((card) => card.id)).toEqual(["a", "b"]);
      answered(await third.writeCards({ cards: [talk("b", [], 1)], deed: deed("write") }));
      expect(await third.newestWrite()).toBe(4);
      answered(await third.verify());
    });
  });
}
