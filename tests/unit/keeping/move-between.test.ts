import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import { moveBetween } from "#server/keeping/move-between.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered, refusedWith } from "#tests/support/expect-answer.ts";
import { dumpOf } from "#tests/support/read-all.ts";

const quiet = (): void => {};

async function filled(): Promise<Store> {
  const store = openMemoryStore();
  answered(await store.commit(aCommit(adding(aTerm("tool.saw"), aTerm("tool.axe")))));
  answered(await store.createExamination(id("examination.a"), aPiece(), "2026-11-25T10:00:00.000Z"));
  return store;
}

/** The store, with something done when so many records of a dump of it were read. */
const interrupted = (store: Store, after: number, what: () => Promise<unknown>): Store => ({
  ...store,
  dump: async function* () {
    let read = 0;
    for await (const record of store.dump()) {
      if (read++ === after) await what();
      yield record;
    }
  },
});

describe("[S55] moving a store", () => {
  it("copies everything, compares the hashes of both dumps, and leaves the old store as it was", async () => {
    const [from, to] = [await filled(), openMemoryStore()];
    const before = await dumpOf(from);
    const said: string[] = [];
    const moved = answered(await moveBetween(from, to, (words) => said.push(words())));
    const sha256 = (before.at(-1) as { readonly sha256: string }).sha256;
    expect(moved).toEqual({
      ...{ revisions: 1, edits: 2, examinations: 1, before: sha256, after: sha256, missed: 0 },
    });
    expect(await dumpOf(to)).toEqual(before);
    expect(await dumpOf(from)).toEqual(before);
    expect(said).toContain("Copying: revision 1 of 1, 2 edits, 0 examinations");
    expect(said.at(-1)).toBe("Comparing: revision 1 of 1, 2 edits, 1 examinations");
  });

  it("refuses a store that is not empty before it reads anything", async () => {
    const withPiece = openMemoryStore();
    answered(await withPiece.createExamination(id("examination.z"), aPiece(), "2026-11-25T10:00:00.000Z"));
    const unread: Store = {
      ...(await filled()),
      dump: () => {
        throw new Error("read");
      },
    };
    expect(refusedWith(await moveBetween(unread, withPiece, quiet))).toBe("STORE_NOT_EMPTY");
  });

  it("tells how many writes the old store took meanwhile that did not come along", async () => {
    const store = await filled();
    const from = interrupted(store, 1, async () => {
      answered(await store.commit(aCommit(adding(aTerm("tool.plane")))));
      answered(await store.deleteExamination(id("examination.a"), 1, "2026-11-25T11:00:00.000Z"));
      answered(await store.createExamination(id("examination.b"), aPiece(), "2026-11-25T11:00:00.000Z"));
    });
    const to = openMemoryStore();
    expect(answered(await moveBetween(from, to, quiet))).toMatchObject({ missed: 3, revisions: 1 });
    expect(await dumpOf(to)).toHaveLength(6);
  });

  it("does not call what was written just before the reading missed", async () => {
    const store = await filled();
    const from: Store = {
      ...store,
      dump: async function* () {
        answered(await store.commit(aCommit(adding(aTerm("tool.plane")))));
        yield* store.dump();
      },
    };
    expect(answered(await moveBetween(from, openMemoryStore(), quiet))).toMatchObject({
      ...{ revisions: 2, missed: 0 },
    });
  });

  it("refuses a new store that gives another dump than the old one", async () => {
    const to = openMemoryStore();
    const altering: Store = { ...to, dump: () => openMemoryStore().dump() };
    const refused = await moveBetween(await filled(), altering, quiet);
    expect(refused).toMatchObject({ code: "STORE_CORRUPT" });
  });

  it("hands on why the new store takes nothing", async () => {
    const full: Store = {
      ...openMemoryStore(),
      restore: async () => ({ problem: true, code: "STORE_FULL", message: "The disk is full.", path: [] }),
    };
    expect(refusedWith(await moveBetween(await filled(), full, quiet))).toBe("STORE_FULL");
  });
});
