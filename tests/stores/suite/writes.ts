import { beforeEach, describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aCommit, adding, aTerm, replacing } from "#tests/support/build-change.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered, refusedWith } from "#tests/support/expect-answer.ts";
import { plainWrites } from "#tests/support/plain-writes.ts";
import { dumpOf } from "#tests/support/read-all.ts";

const saw = aTerm("tool.saw");
const chest = id<"examination">("examination.chest");
const at = "2026-11-25T10:00:00.000Z";
const version = (number: number) => ({ id: chest, version: number });

/** Rules S46 and S47: the numbered list of all writes. */
export function writeGroup(open: () => Promise<Store>): void {
  describe("writes", () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });
    /** Two revisions and three versions. */
    const fill = async (): Promise<void> => {
      answered(await store.commit(aCommit(adding(saw))));
      answered(await store.createExamination(chest, aPiece(), at));
      answered(await store.changeExamination(chest, 1, { ...aPiece(), title: "two" }, at));
      answered(await store.commit(aCommit(replacing(saw, aTerm("tool.saw", { note: "Toothed." })))));
      answered(await store.undoExamination(chest, 2, at));
      answered(await store.deleteExamination(chest, 3, at));
    };
    const six = [
      { sequence: 1, revision: 1 },
      { sequence: 2, examination: version(1) },
      { sequence: 3, examination: version(2) },
      { sequence: 4, revision: 2 },
      { sequence: 5, examination: version(3) },
      { sequence: 6, examination: version(4) },
    ];

    it("[S46] numbers commits and versions in the order in which they were kept", async () => {
      expect(await store.newestWrite()).toBe(0);
      expect(plainWrites(await store.writesAfter(0, 10))).toEqual([]);
      await fill();
      expect(await store.newestWrite()).toBe(6);
      expect(plainWrites(await store.writesAfter(0, 10))).toEqual(six);
      expect(await store.verify()).toMatchObject({ revisions: 2 });
    });

    it("[S46] gives no number to what was refused", async () => {
      await fill();
      expect(refusedWith(await store.commit(aCommit(adding(saw))))).toBe("STALE_CHANGE");
      expect(refusedWith(await store.createExamination(chest, aPiece(), at))).toBe("DUPLICATE_ID");
      expect(refusedWith(await store.undoExamination(chest, 1, at))).toBe("CHANGED_MEANWHILE");
      expect(await store.newestWrite()).toBe(6);
      answered(await store.undoExamination(chest, 4, at));
      expect(plainWrites(await store.writesAfter(6, 10))).toEqual([{ sequence: 7, examination: version(5) }]);
    });

    it("[S46] hands them out from any number on, as many as asked for", async () => {
      await fill();
      expect(plainWrites(await store.writesAfter(2, 2))).toEqual(six.slice(2, 4));
      expect(plainWrites(await store.writesAfter(5, 1))).toEqual(six.slice(5));
      expect(plainWrites(await store.writesAfter(6, 1))).toEqual([]);
      expect(plainWrites(await store.writesAfter(99, 1))).toEqual([]);
      expect(Object.isFrozen((await store.writesAfter(0, 1))[0])).toBe(true);
      for (const first of [0, -1, 1.5]) await expect(store.writesAfter(0, first)).rejects.toThrow(RangeError);
    });

    it("[S46] numbers writes that are made at once without a gap", async () => {
      const writes = Array.from({ length: 12 }, (_, n) =>
        n % 3 === 0
          ? store.createExamination(id(`examination.e${n}`), aPiece(), at)
          : store.commit(aCommit(adding(aTerm(`tool.t${n}`)))),
      );
      for (const answer of await Promise.all(writes)) answered<object>(answer);
      const written = await store.writesAfter(0, 20);
      expect(written.map(({ sequence }) => sequence)).toEqual(writes.map((_, n) => n + 1));
      expect(written.flatMap(({ revision }) => revision ?? [])).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
      expect(new Set(written.flatMap(({ examination }) => examination?.id ?? [])).size).toBe(4);
    });

    it("[S47] a restore brings the numbers with it, and goes on from there", async () => {
      await fill();
      const other = await open();
      answered(await other.restore(store.dump()));
      expect(plainWrites(await other.writesAfter(0, 10))).toEqual(six);
      expect(refusedWith(await other.restore(await dumpOf(store)))).toBe("STORE_NOT_EMPTY");
      answered(await other.commit(aCommit(adding(aTerm("tool.plane")))));
      answered(await other.undoExamination(chest, 4, at));
      expect(plainWrites(await other.writesAfter(0, 10))).toEqual([
        ...six,
        { sequence: 7, revision: 3 },
        { sequence: 8, examination: version(5) },
      ]);
      expect(await other.verify()).toMatchObject({ revisions: 3 });
    });

    it("[S47] a restore that brings nothing has no number", async () => {
      const empty = openMemoryStore();
      answered(await store.restore(empty.dump()));
      expect(await store.newestWrite()).toBe(0);
      answered(await empty.createExamination(chest, aPiece(), at));
      answered(await store.restore(empty.dump()));
      expect(plainWrites(await store.writesAfter(0, 10))).toEqual([{ sequence: 1, examination: version(1) }]);
      expect(refusedWith(await store.restore(openMemoryStore().dump()))).toBe("STORE_NOT_EMPTY");
      expect(await store.verify()).toMatchObject({ revisions: 0 });
    });
  });
}
