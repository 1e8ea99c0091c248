import { beforeEach, describe, expect, it } from "vitest";
import type { CardKeys } from "#server/domain/card.ts";
import type { Examination, Piece } from "#server/domain/examination.ts";
import { id } from "#server/domain/ids.ts";
import type { LeftOut, Store } from "#server/ports/store.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered, refusedWith } from "#tests/support/expect-answer.ts";
import { allRows, dumpOf } from "#tests/support/read-all.ts";

const chest = id<"examination">("examination.chest");
const titled = (title: string): Piece => ({ ...aPiece(), title });
const at = (minute: number): string => `2026-11-25T10:${String(minute).padStart(2, "0")}:00.000Z`;

/** Rule S7: versions of examinations, undo and deletion. */
export function examinationGroup(open: () => Promise<Store>): void {
  describe("examinations", () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });
    const create = async (title = "one", minute = 1, name = chest) =>
      answered(await store.createExamination(name, titled(title), at(minute)));
    const change = async (on: number, title: string) =>
      answered(await store.changeExamination(chest, on, titled(title), at(on + 1)));
    const undo = async (on: number) => answered(await store.undoExamination(chest, on, at(on + 1)));
    const about = ({ version, piece, deleted, undoTo }: Examination) =>
      [version, piece.title, ...(deleted ? ["deleted"] : []), undoTo] as const;

    it("[S7] keeps every version as it was", async () => {
      const first = await create();
      expect(first).toEqual({
        id: chest,
        version: 1,
        deleted: false,
        changedAt: at(1),
        piece: titled("one"),
      });
      const second = await change(1, "two");
      expect(second).toEqual({ ...first, version: 2, undoTo: 1, changedAt: at(2), piece: titled("two") });
      expect(await store.examination(chest)).toEqual(second);
      expect(await store.examination(chest, 1)).toEqual(first);
      expect(await store.examination(chest, 2)).toEqual(second);
      for (const version of [0, 3, -1, 1.5]) expect(await store.examination(chest, version)).toBeUndefined();
    });

    it("[S7] goes one change further back with each undo, and on from there with a new change", async () => {
      await create();
      await change(1, "two");
      await change(2, "three");
      expect(about(await undo(3))).toEqual([4, "two", 1]);
      expect(about(await undo(4))).toEqual([5, "one", undefined]);
      expect(refusedWith(await store.undoExamination(chest, 5, at(6)))).toBe("NOTHING_TO_UNDO");
      expect(about(await change(5, "other"))).toEqual([6, "other", 5]);
      expect(about(await undo(6))).toEqual([7, "one", undefined]);
      expect(refusedWith(await store.undoExamination(chest, 7, at(8)))).toBe("NOTHING_TO_UNDO");
      expect((await store.examination(chest, 3))?.piece.title).toBe("three");
    });

    it("[S7] hides a deleted one from the list, and brings it back by undo", async () => {
      await create();
      await change(1, "two");
      const gone = answered(await store.deleteExamination(chest, 2, at(3)));
      expect(about(gone)).toEqual([3, "two", "deleted", 2]);
      expect(await store.examination(chest)).toEqual(gone);
      expect(await store.listExaminations({ first: 5 })).toMatchObject({ rows: [], total: 0 });
      expect(about(await undo(3))).toEqual([4, "two", 1]);
      expect((await store.listExaminations({ first: 5 })).total).toBe(1);
      expect(about(await undo(4))).toEqual([5, "one", undefined]);
    });

    it("[S7] refuses to change or delete what is deleted", async () => {
      await create();
      answered(await store.deleteExamination(chest, 1, at(2)));
      expect(refusedWith(await store.changeExamination(chest, 2, titled("x"), at(3)))).toBe(
        "UNKNOWN_EXAMINATION",
      );
      expect(refusedWith(await store.deleteExamination(chest, 2, at(3)))).toBe("UNKNOWN_EXAMINATION");
    });

    it("[S7] refuses a write made on another version than the newest, and writes nothing", async () => {
      await create();
      await change(1, "two");
      const before = await dumpOf(store);
      for (const on of [0, 1, 3]) {
        expect(refusedWith(await store.changeExamination(chest, on, titled("x"), at(9)))).toBe(
          "CHANGED_MEANWHILE",
        );
        expect(refusedWith(await store.deleteExamination(chest, on, at(9)))).toBe("CHANGED_MEANWHILE");
        expect(refusedWith(await store.undoExamination(chest, on, at(9)))).toBe("CHANGED_MEANWHILE");
      }
      expect(await dumpOf(store)).toEqual(before);
    });

    it("[S7] lets one of two changes made at the same time through", async () => {
      await create();
      const answers = await Promise.all(
        ["mine", "yours"].map((title) => store.changeExamination(chest, 1, titled(title), at(2))),
      );
      expect(answers.map((answer) => ("problem" in answer ? answer.code : answer.piece.title))).toEqual([
        "mine",
        "CHANGED_MEANWHILE",
      ]);
      expect((await store.examination(chest))?.piece.title).toBe("mine");
    });

    it("[S7] refuses an id that was ever used, and ids that were not", async () => {
      await create();
      answered(await store.deleteExamination(chest, 1, at(2)));
      expect(refusedWith(await store.createExamination(chest, titled("again"), at(3)))).toBe("DUPLICATE_ID");
      const none = id<"examination">("examination.none");
      expect(refusedWith(await store.changeExamination(none, 1, titled("x"), at(3)))).toBe(
        "UNKNOWN_EXAMINATION",
      );
      expect(refusedWith(await store.undoExamination(none, 1, at(3)))).toBe("UNKNOWN_EXAMINATION");
      expect(refusedWith(await store.deleteExamination(none, 1, at(3)))).toBe("UNKNOWN_EXAMINATION");
    });

    it("[S4] lists the last changed first, ties by id, page by page", async () => {
      for (const [name, minute] of [
        ["b", 5],
        ["a", 5],
        ["c", 1],
        ["d", 9],
      ] as const)
        await create(name, minute, id<"examination">(`examination.${name}`));
      answered(await store.changeExamination(id("examination.c"), 1, titled("c"), at(7)));
      for (const first of [1, 2, 3, 50]) {
        const rows = await allRows((page) => store.listExaminations(page), first);
        expect(rows.map(({ piece }) => piece.title)).toEqual(["d", "c", "a", "b"]);
      }
      expect(await store.listExaminations({ first: 3 })).toMatchObject({ hasMore: true, total: 4 });
      expect(
        (await store.listExaminations({ first: 3, after: "not a cursor" })).rows.length,
      ).toBeLessThanOrEqual(3);
    });

    it("[S74] leaves out what has a card that is found by one key and not by another, and counts the rest", async () => {
      const kind = "shelf";
      const by = { name: "locked", value: "yes" };
      const unless = { name: "opened-by", value: "person.a" };
      const keys = [
        ...[undefined, {}, { locked: ["yes"] }, { locked: ["yes"], "opened-by": ["person.b", "person.a"] }],
        ...[
          { locked: ["no"] },
          { locked: ["yes"], "opened-by": ["person.b"] },
          { "opened-by": ["person.a"] },
        ],
      ];
      for (const [n, of] of keys.entries()) {
        const name = id<"examination">(`examination.e${n}`);
        const next = of && { keys: of as CardKeys, body: {} };
        const cards = next ? [{ kind, id: name, expectedVersion: 0, next }] : [];
        const deed = { by: "test", at: at(n), did: "record" };
        answered(await store.createExamination(name, titled(`${n}`), at(n), { cards, deed }));
      }
      answered(await store.deleteExamination(id("examination.e6"), 1, at(9)));
      const listed = async (leftOut: LeftOut, first: number) => {
        const rows = await allRows((page) => store.listExaminations(page, leftOut), first);
        expect((await store.listExaminations({ first }, leftOut)).total).toBe(rows.length);
        return rows.map(({ piece }) => piece.title).join("");
      };
      for (const first of [1, 2, 50]) {
        expect(await listed({ kind, by, unless }, first)).toBe("4310");
        expect(await listed({ kind, by }, first)).toBe("410");
        expect(await listed({ kind: "another", by, unless }, first)).toBe("543210");
      }
    });

    it("[S10] answers a write with a value that nobody can change", async () => {
      const created = answered(await store.createExamination(chest, titled("mine"), at(1)));
      const undone = async () => answered(await store.undoExamination(chest, 2, at(3)));
      const changed = answered(await store.changeExamination(chest, 1, titled("changed"), at(2)));
      for (const written of [created, changed, await undone()])
        expect(() => Object.assign(written, { version: 99 })).toThrow(TypeError);
      expect((await store.examination(chest))?.version).toBe(3);
    });

    it("[S10] is not reached by what its callers do with a piece handed over", async () => {
      const mine = { ...titled("mine"), note: "as given" };
      answered(await store.createExamination(chest, mine, at(1)));
      mine.note = "changed";
      const theirs = (await store.examination(chest))?.piece as { note: string };
      expect(() => {
        theirs.note = "changed";
      }).toThrow(TypeError);
      expect((await store.examination(chest))?.piece.note).toBe("as given");
    });
  });
}
