import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ExaminationId, id } from "#server/domain/ids.ts";
import { type Caller, LOCAL_CALLER } from "#server/domain/people/caller.ts";
import { ACCESS_CARD, accessOf, accessWrite, isShown } from "#server/domain/people/examination-access.ts";
import type { Page, Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { shownStore } from "#server/use-cases/people/shown-store.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered } from "#tests/support/expect-answer.ts";

const PEOPLE = ["person.a", "person.b", "person.c"];
const as = (person: string): Caller => ({ id: person, role: "owner", via: "session" });
const named = (n: number): ExaminationId => id(`examination.e${n}`);
const at = (minute: number) => new Date(Date.UTC(2026, 0, 1, 0, minute)).toISOString();

const accesses = fc.array(
  fc.record({
    by: fc.constantFrom(...PEOPLE),
    seenBy: fc.oneof(fc.constant(["house"]), fc.subarray(PEOPLE)),
    hasCard: fc.boolean(),
    becomes: fc.constantFrom("kept", "deleted", "brought back"),
  }),
  { minLength: 1, maxLength: 12 },
);

/** A store of examinations, each shown as it says; whoever recorded it deleted some, and brought some back. */
async function openShown(
  all: readonly (typeof accesses extends fc.Arbitrary<infer T> ? T : never)[number][],
) {
  const store = openMemoryStore();
  for (const [n, { hasCard, becomes, by, seenBy }] of all.entries()) {
    const cards = hasCard ? [accessWrite(named(n), 0, { by, seenBy })] : [];
    const deed = { by, at: at(n), did: "record examination" };
    answered(await store.createExamination(named(n), aPiece(), at(n), { cards, deed }));
    const own = shownStore(store, as(by));
    if (becomes !== "kept") answered(await own.deleteExamination(named(n), 1, at(20 + n), { deed }));
    if (becomes === "brought back") answered(await own.undoExamination(named(n), 2, at(40 + n), { deed }));
  }
  return store;
}

describe("[C25] the store as far as somebody may see it", () => {
  it("lists and counts exactly what is shown, in the same order, whatever the size of a page", async () => {
    await fc.assert(
      fc.asyncProperty(
        accesses,
        fc.constantFrom(...PEOPLE),
        fc.integer({ min: 1, max: 5 }),
        async (all, person, first) => {
          const store = await openShown(all);
          const cards = await store.cards(
            ACCESS_CARD,
            all.map((_, n) => named(n)),
          );
          const { rows } = await store.listExaminations({ first: 200 });
          const expected = rows.map((row) => row.id).filter((one) => isShown(cards.get(one), { id: person }));
          const shown = shownStore(store, as(person));
          const found: string[] = [];
          let page: Page<{ readonly id: string }>;
          let after: string | undefined;
          do {
            page = await shown.listExaminations({ first, ...(after === undefined ? {} : { after }) });
            expect(page.total).toBe(expected.length);
            expect(page.cursors).toHaveLength(page.rows.length);
            found.push(...page.rows.map((row) => row.id));
            expect(page.hasMore).toBe(found.length < expected.length);
            after = page.cursors.at(-1);
          } while (page.hasMore);
          expect(found).toEqual(expected);
          for (const [n] of all.entries())
            expect((await shown.examination(named(n))) !== undefined).toBe(
              isShown(cards.get(named(n)), { id: person }),
            );
        },
      ),
      { numRuns: 60 },
    );
  });

  it("reads no examination that is not shown, and asks for one page where it is full", async () => {
    const many = Array.from({ length: 450 }, (_, n) => ({
      ...{ by: "person.a", seenBy: n % 150 === 7 ? ["person.b"] : [] },
      ...{ hasCard: n !== 3, becomes: "kept" as const },
    }));
    const store = await openShown(many);
    const read: string[] = [];
    const watched: Store = {
      ...store,
      listExaminations: async (...asked) => {
        const page = await store.listExaminations(...asked);
        read.push(page.rows.map((row) => row.id).join(" "));
        return page;
      },
    };
    const shown = shownStore(watched, as("person.b"));
    expect(await shown.listExaminations({ first: 20 })).toMatchObject({ hasMore: false, total: 4 });
    expect(read).toEqual([[307, 157, 7, 3].map(named).join(" ")]);
    expect(await shown.listExaminations({ first: 2 })).toMatchObject({ hasMore: true, total: 4 });
    expect(read).toHaveLength(2);
  });

  it("answers every write to what is not shown like one to what there is not, and keeps nothing of it", async () => {
    const store = await openShown([{ by: "person.a", seenBy: [], hasCard: true, becomes: "kept" }]);
    const shown = shownStore(store, as("person.b"));
    const writes = await store.newestWrite();
    const answers = async (of: ExaminationId) => [
      await shown.changeExamination(of, 1, aPiece(), at(1)),
      await shown.deleteExamination(of, 1, at(1)),
      await shown.undoExamination(of, 1, at(1)),
    ];
    const hidden = JSON.stringify(await answers(named(0)));
    expect(hidden).toContain("UNKNOWN_EXAMINATION");
    expect(hidden.replaceAll(named(0), named(1))).toBe(JSON.stringify(await answers(named(1))));
    expect(await store.newestWrite()).toBe(writes);
  });

  it("is the store itself for whoever uses the house alone, and shows nothing kept to nobody", async () => {
    const store = await openShown([{ by: "person.a", seenBy: ["person.b"], hasCard: true, becomes: "kept" }]);
    expect(shownStore(store, LOCAL_CALLER)).toBe(store);
    expect(await shownStore(store, undefined).examination(named(0))).toBeUndefined();
    expect((await shownStore(store, undefined).listExaminations({ first: 1 })).total).toBe(0);
    const card = await store.card(ACCESS_CARD, named(0));
    expect(card && accessOf(card)).toEqual({ by: "person.a", seenBy: ["person.b"] });
  });
});
