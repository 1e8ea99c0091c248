import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Change, Edit } from "#server/domain/change.ts";
import { id } from "#server/domain/ids.ts";
import type { Store } from "#server/ports/store.ts";
import { anyHistory } from "#tests/support/any-history.ts";
import { aCommit, adding, aSource, aTerm, replacing, withdrawing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { allRows } from "#tests/support/read-all.ts";

const saw = aTerm("tool.saw");
const noted = aTerm("tool.saw", { note: "Leaves arcs." });
const book = aSource("source.book");
const dated = aClaim({ id: "claim.1", relation: "introduced", subject: "tool.saw", when: "1790" });
const rejected = { ...dated, status: "rejected" as const };

/** Rule S41: what became of one thing. */
export function historyGroup(open: () => Promise<Store>, runs: number): void {
  describe("the history of one thing", () => {
    const storeWith = async (...changes: readonly Change[]): Promise<Store> => {
      const store = await open();
      for (const [i, change] of changes.entries())
        answered(await store.commit(aCommit(change, { by: `hand ${i + 1}`, message: `reason ${i + 1}` })));
      return store;
    };
    const edits = async (store: Store, kind: Edit["kind"], name: string) =>
      (await store.history(kind, id(name), { first: 9 })).rows.map(({ revision, edit }) => [
        revision.number,
        edit.before,
        edit.after,
      ]);

    it("[S41] has every edit, newest first: added, said otherwise, withdrawn, added again", async () => {
      const store = await storeWith(
        adding(saw, book, dated),
        [...replacing(dated, rejected), ...replacing(saw, noted)],
        withdrawing(rejected),
        adding(aTerm("tool.plane")),
        adding(dated),
      );
      expect(await edits(store, "claim", "claim.1")).toEqual([
        [5, undefined, dated],
        [3, rejected, undefined],
        [2, dated, rejected],
        [1, undefined, dated],
      ]);
      expect(await edits(store, "term", "tool.saw")).toEqual([
        [2, saw, noted],
        [1, undefined, saw],
      ]);
      expect(await edits(store, "source", "source.book")).toEqual([[1, undefined, book]]);
    });

    it("[S41] names the revision with who made it and why", async () => {
      const store = await storeWith(adding(saw), replacing(saw, noted));
      const { rows } = await store.history("term", saw.id, { first: 1 });
      expect(rows[0]?.revision).toEqual(await store.newestRevision());
      expect(rows[0]?.revision).toMatchObject({ number: 2, by: "hand 2", message: "reason 2" });
    });

    it("[S41] is empty for what never was, and for an id of another kind", async () => {
      const store = await storeWith(adding(saw));
      const none = { rows: [], cursors: [], hasMore: false, total: 0 };
      expect(await store.history("claim", id("claim.none"), { first: 3 })).toEqual(none);
      expect(await store.history("claim", id("tool.saw"), { first: 3 })).toEqual(none);
    });

    it("[S4] [S41] is given page by page", async () => {
      const notes = ["one", "two", "three", "four", "five"].map((note) => aTerm("tool.saw", { note }));
      const store = await storeWith(
        adding(notes[0] as typeof saw),
        ...notes.slice(1).map((note, i) => replacing(notes[i] as typeof saw, note)),
      );
      const page = await store.history("term", saw.id, { first: 2 });
      expect(page).toMatchObject({ hasMore: true, total: 5 });
      const all = await allRows((ask) => store.history("term", saw.id, ask), 2);
      expect(all.map(({ revision }) => revision.number)).toEqual([5, 4, 3, 2, 1]);
      expect((await store.history("term", saw.id, { first: 2, after: "5" })).total).toBe(5);
      expect(
        (await store.history("term", saw.id, { first: 2, after: "no cursor" })).rows.length,
      ).toBeLessThan(3);
      for (const first of [0, 201])
        await expect(store.history("term", saw.id, { first })).rejects.toThrow(RangeError);
    });

    it("[S41] finds a revision by its number, and none of a number that there is not", async () => {
      const store = await storeWith(adding(saw), replacing(saw, noted));
      expect(await store.revision(2)).toEqual(await store.newestRevision());
      expect((await store.revision(1))?.message).toBe("reason 1");
      for (const number of [0, 3, -1, 1.5]) expect(await store.revision(number)).toBeUndefined();
    });

    it("[S41] holds what the changes did, and leads from the first to what stands", async () => {
      await fc.assert(
        fc.asyncProperty(anyHistory, async ({ changes }) => {
          const store = await storeWith(...changes);
          const ids = new Set(
            changes.flat().map(({ kind, before, after }) => `${kind} ${(after ?? before)?.id}`),
          );
          for (const [kind, name] of [...ids].map((key) => key.split(" ") as [Edit["kind"], string])) {
            const { rows } = await store.history(kind, id(name), { first: 200 });
            const made = changes.flatMap((change, at) =>
              change
                .filter((edit) => edit.kind === kind && (edit.after ?? edit.before)?.id === name)
                .map((edit) => ({ number: at + 1, edit })),
            );
            expect(rows.map(({ revision, edit }) => ({ number: revision.number, edit }))).toEqual(
              made.toReversed(),
            );
          }
          await store.close();
        }),
        { numRuns: Math.ceil(runs / 4) },
      );
    });
  });
}
