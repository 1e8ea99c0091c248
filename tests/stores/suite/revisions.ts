import { createHash } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import { canonicalJson } from "#server/domain/canonical-json.ts";
import type { Change } from "#server/domain/change.ts";
import { id } from "#server/domain/ids.ts";
import type { Term } from "#server/domain/term.ts";
import type { Store } from "#server/ports/store.ts";
import { aCommit, adding, aSource, aTerm, replacing, withdrawing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { answered, refusedWith } from "#tests/support/expect-answer.ts";
import { allRows, dumpOf } from "#tests/support/read-all.ts";

const saw = aTerm("tool.circular-saw");
const sawWithNote = aTerm("tool.circular-saw", { note: "Leaves arcs." });
const mark = aTerm("feature.circular-saw-mark");
const world = aTerm("region.world");
const england = aTerm("region.england", { broader: "region.world" });
const needsSaw = aClaim({ id: "claim.A1", relation: "requires", subject: mark.id, ways: [[saw.id]] });
const gauge = aTerm("tool.gauge");
const book = aSource("source.book");

/** Rules S1, S2, S6 and S10: what a commit does, and reading what stood before it. */
export function revisionGroup(open: () => Promise<Store>): void {
  describe("revisions", () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });
    const commit = async (change: Change) => answered(await store.commit(aCommit(change)));

    it("[S69] tells why it would refuse a change, and writes nothing", async () => {
      await commit(adding(saw, mark, needsSaw, book));
      for (const change of [adding(saw), withdrawing(saw), [], replacing(sawWithNote, saw)]) {
        const told = await store.wouldRefuse(change);
        expect(told).toMatchObject({ problem: true });
        expect(told).toEqual(await store.commit(aCommit(change)));
      }
      expect(await store.wouldRefuse(replacing(saw, sawWithNote))).toBeUndefined();
      expect(await store.newestWrite()).toBe(1);
      await commit(replacing(saw, sawWithNote));
    });

    it("[S1] [S6] reads the graph as it stood at each revision, and verifies what was withdrawn and added again", async () => {
      await commit(adding(saw, mark, needsSaw, book));
      await commit(replacing(saw, sawWithNote));
      await commit(withdrawing(needsSaw, book));
      await commit(adding(needsSaw));

      const ids = [saw.id, mark.id, id<"term">("tool.none")];
      const notes = async (at?: number) => [...(await store.terms(ids, at)).values()];
      expect(await notes(1)).toEqual([mark, saw]);
      expect(await notes(2)).toEqual([mark, sawWithNote]);
      expect(await notes()).toEqual([mark, sawWithNote]);
      const claimsAt = async (at?: number) => [...(await store.claims([needsSaw.id], at)).keys()];
      expect([
        await claimsAt(1),
        await claimsAt(2),
        await claimsAt(3),
        await claimsAt(4),
        await claimsAt(),
      ]).toEqual([[needsSaw.id], [needsSaw.id], [], [needsSaw.id], [needsSaw.id]]);
      expect((await store.sources([book.id], 2)).get(book.id)).toEqual(book);
      expect(await store.sources([book.id])).toEqual(new Map());
      const listed = async (at: number) =>
        (await store.listClaims({}, { first: 9 }, at)).rows.map(({ id }) => id);
      expect([await listed(1), await listed(3), await listed(4)]).toEqual([[needsSaw.id], [], [needsSaw.id]]);
      expect((await store.listTerms({}, { first: 9 }, 1)).rows).toEqual([mark, saw]);
      expect((await store.listSources({ first: 9 }, 2)).rows).toEqual([book]);
      expect(await store.verify()).toMatchObject({ revisions: 4 });
    });

    it("[S1] reads the empty graph at revision 0, and no revision that does not exist", async () => {
      await commit(adding(saw));
      expect(await store.terms([saw.id], 0)).toEqual(new Map());
      expect((await store.listTerms({}, { first: 1 }, 0)).total).toBe(0);
      for (const at of [2, -1, 0.5, Number.NaN]) {
        await expect(store.terms([saw.id], at)).rejects.toThrow(RangeError);
        await expect(store.listClaims({}, { first: 1 }, at)).rejects.toThrow(RangeError);
        await expect(store.neighbourhood({ seeds: [], regions: [], maxDepth: 1, at })).rejects.toThrow(
          RangeError,
        );
      }
    });

    it("[S5] knows nothing of what is missing, and says so without an error", async () => {
      expect(await store.newestRevision()).toBeUndefined();
      expect(await store.changeAt(1)).toBeUndefined();
      expect(await store.revisions({ first: 5 })).toEqual({
        rows: [],
        cursors: [],
        hasMore: false,
        total: 0,
      });
      expect((await store.claims([id("claim.none")])).size).toBe(0);
      expect(await store.examination(id("examination.none"))).toBeUndefined();
      expect((await store.neighbourhood({ seeds: [saw.id], regions: [], maxDepth: 3 })).revision).toBe(0);
    });

    it("[S6] chains each revision to the one before by hashes anybody can recompute", async () => {
      const hash = (value: unknown) => createHash("sha256").update(canonicalJson(value)).digest("hex");
      const first = adding(saw);
      const second = replacing(saw, sawWithNote);
      const one = await commit(first);
      const two = await commit(second);
      expect(one).toMatchObject({ number: 1, by: "a tester", message: "a change", content: hash(first) });
      expect(one.previous).toBe("0".repeat(64));
      const { hash: head, ...fields } = two;
      expect(fields).toMatchObject({ number: 2, previous: one.hash, content: hash(second) });
      expect(head).toBe(hash(fields));
      expect(await store.newestRevision()).toEqual(two);
      expect(await store.changeAt(1)).toEqual(first);
      expect(await store.verify()).toEqual({ revisions: 2, head });
    });

    it("[S6] verifies an empty store", async () => {
      expect(await store.verify()).toEqual({ revisions: 0, head: "0".repeat(64) });
    });

    it("[S4] lists revisions from the newest, page by page", async () => {
      for (let n = 1; n <= 5; n++) await commit(adding(aTerm(`tool.t${n}`)));
      const page = await store.revisions({ first: 2 });
      expect(page.rows.map(({ number }) => number)).toEqual([5, 4]);
      expect(page).toMatchObject({ hasMore: true, total: 5 });
      const all = await allRows((ask) => store.revisions(ask), 2);
      expect(all.map(({ number }) => number)).toEqual([5, 4, 3, 2, 1]);
      expect((await store.revisions({ first: 3, after: "not a cursor" })).rows.length).toBeLessThanOrEqual(3);
    });

    const refusals: readonly (readonly [string, Change, string])[] = [
      ["no edit", [], "EMPTY_LIST"],
      ["an edit of nothing", [{ kind: "term" }], "WRONG_FORMAT"],
      ["an edit that renames", [{ kind: "term", before: saw, after: mark }], "WRONG_FORMAT"],
      ["two edits of one thing", [...adding(gauge), ...adding(gauge)], "DUPLICATE_ID"],
      ["a new thing that stands already", adding(saw), "STALE_CHANGE"],
      ["a before that never stood", replacing(sawWithNote, saw), "STALE_CHANGE"],
      ["the withdrawal of what does not stand", withdrawing(gauge), "STALE_CHANGE"],
      [
        "a claim that names a missing term",
        adding(aClaim({ ...needsSaw, id: "claim.A2", ways: [["tool.none"]] } as never)),
        "UNKNOWN_TERM",
      ],
      ["the withdrawal of a term still named", withdrawing(saw), "UNKNOWN_TERM"],
      ["the withdrawal of a source still cited", withdrawing(book), "UNKNOWN_SOURCE"],
      [
        "a claim that cites nothing",
        adding({ ...needsSaw, id: id<"claim">("claim.A2"), citations: [] } as never),
        "UNCITED_CLAIM",
      ],
      [
        "a cycle of broader terms",
        [...replacing(world, aTerm("region.world", { broader: "region.england" }))],
        "CYCLE_OF_BROADER_TERMS",
      ],
      [
        "a cycle of exceptions",
        adding(
          aClaim({ id: "claim.X1", relation: "void when", of: "claim.X2", condition: mark.id }),
          aClaim({ id: "claim.X2", relation: "void when", of: "claim.X1", condition: mark.id }),
        ),
        "CYCLE_OF_EXCEPTIONS",
      ],
    ];
    describe("[S2] a refused change leaves nothing behind:", () => {
      beforeEach(async () => {
        const cited = {
          ...needsSaw,
          citations: [{ basis: "published" as const, source: book.id, locator: "p. 1" }] as const,
        };
        await commit(adding(saw, mark, world, england, book, cited));
      });
      it.each(refusals)("%s", async (_, change, code) => {
        const before = await dumpOf(store);
        expect(refusedWith(await store.commit(aCommit(change)))).toBe(code);
        const withMore = [...adding(aTerm("tool.plane")), ...change];
        if (change.length > 0) expect(refusedWith(await store.commit(aCommit(withMore)))).toBe(code);
        expect(await dumpOf(store)).toEqual(before);
        expect((await store.terms([id("tool.plane")])).size).toBe(0);
        expect(await store.verify()).toMatchObject({ revisions: 1 });
      });
    });

    it("[S2] refuses a change made on another revision than the newest", async () => {
      answered(await store.commit(aCommit(adding(saw), { expected: 0 })));
      const late = aCommit(adding(mark), { expected: 0 });
      expect(refusedWith(await store.commit(late))).toBe("CHANGED_MEANWHILE");
      expect((await store.newestRevision())?.number).toBe(1);
      answered(await store.commit({ ...late, expected: 1 }));
    });

    it("[S2] lets one of two changes made at the same time through", async () => {
      await commit(adding(saw));
      const answers = await Promise.all(
        ["one", "two"].map((note) =>
          store.commit(aCommit(replacing(saw, aTerm("tool.circular-saw", { note })))),
        ),
      );
      expect(answers.map((answer) => ("problem" in answer ? answer.code : answer.number))).toEqual([
        2,
        "STALE_CHANGE",
      ]);
      expect((await store.terms([saw.id])).get(saw.id)?.note).toBe("one");
    });

    it("[S10] is not reached by what its callers do with values handed over", async () => {
      const mine = { ...aTerm("tool.plane"), otherLabels: ["jointer"] };
      await commit(adding(mine));
      mine.otherLabels.push("changed");
      const read = async (): Promise<Term | undefined> => (await store.terms([mine.id])).get(mine.id);
      const theirs = await read();
      expect(theirs).toEqual({ ...aTerm("tool.plane"), otherLabels: ["jointer"] });
      expect(() => (theirs?.otherLabels as unknown[])?.push("changed")).toThrow(TypeError);
      expect((await read())?.otherLabels).toEqual(["jointer"]);
    });

    it("[S2] keeps members that are undefined out of what it stores", async () => {
      await commit(adding({ ...saw, note: undefined } as unknown as Term));
      expect(await store.changeAt(1)).toEqual(adding(saw));
      await commit(replacing({ ...saw, broader: undefined } as unknown as Term, sawWithNote));
      expect(await store.verify()).toMatchObject({ revisions: 2 });
    });
  });
}
