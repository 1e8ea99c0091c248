import { createHash } from "node:crypto";
import fc from "fast-check";
import { beforeEach, describe, expect, it } from "vitest";
import { changeText } from "#server/chain/change-text.ts";
import { linkRevision } from "#server/chain/link-revision.ts";
import { dumpLine, sealDump } from "#server/chain/seal-dump.ts";
import type { DumpedThing, DumpRecord } from "#server/domain/dump.ts";
import { id } from "#server/domain/ids.ts";
import type { Revision } from "#server/domain/revision.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { anyHistory } from "#tests/support/any-history.ts";
import { asVersionOne } from "#tests/support/as-version-one.ts";
import { aCommit, adding, aTerm, replacing } from "#tests/support/build-change.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered, refusedWith } from "#tests/support/expect-answer.ts";
import { dumpOf } from "#tests/support/read-all.ts";

type Kept = DumpedThing;
const isKept = (record: DumpRecord): record is Kept => record.kind !== "header" && record.kind !== "trailer";
/** The dump with its records changed and a right trailer. */
const resealed = (dump: readonly DumpRecord[], change: (records: Kept[]) => Kept[]): DumpRecord[] => [
  ...sealDump(change(dump.filter(isKept))),
];
const withCard = (record: Kept, fields: object): Kept =>
  record.kind === "card" ? { ...record, card: { ...record.card, ...fields } } : record;
const withRevision = (record: Kept, fields: Partial<Revision>): Kept =>
  record.kind === "revision" ? { ...record, revision: { ...record.revision, ...fields } } : record;
const withVersion = (record: Kept, fields: object): Kept =>
  record.kind === "examination" ? { ...record, examination: { ...record.examination, ...fields } } : record;

async function fill(store: Store): Promise<void> {
  const saw = aTerm("tool.saw");
  answered(await store.commit(aCommit(adding(saw, aTerm("feature.mark")))));
  answered(await store.commit(aCommit(replacing(saw, aTerm("tool.saw", { note: "A “toothed” blade.\n" })))));
  const [b, a] = [id<"examination">("examination.b"), id<"examination">("examination.a")];
  answered(await store.createExamination(b, aPiece(), "2026-11-25T10:00:00.000Z"));
  answered(await store.createExamination(a, aPiece(), "2026-11-25T10:01:00.000Z"));
  answered(await store.changeExamination(b, 1, { ...aPiece(), note: "n" }, "2026-11-25T10:02:00.000Z"));
  answered(await store.undoExamination(b, 2, "2026-11-25T10:03:00.000Z"));
  answered(await store.deleteExamination(b, 3, "2026-11-25T10:04:00.000Z"));
  const card = { kind: "comment", expectedVersion: 0, next: { keys: { on: ["tool.saw"] }, body: "Which?" } };
  const deed = { by: "person.a", at: "2026-11-25T10:05:00.000Z", did: "write comments" };
  answered(
    await store.writeCards({
      cards: [
        { ...card, id: "two" },
        { ...card, id: "one" },
      ],
      deed,
    }),
  );
}
/** Records of what `fill` writes: header, 2 revisions, 5 versions, 2 cards, 8 writes, trailer. */
const RECORDS = 19;

const damages: readonly (readonly [
  string,
  string,
  (dump: readonly DumpRecord[]) => readonly DumpRecord[],
])[] = [
  ["nothing at all", "DAMAGED_DUMP", () => []],
  ["no header", "DAMAGED_DUMP", (dump) => dump.slice(1)],
  ["two headers", "DAMAGED_DUMP", (dump) => [...dump.slice(0, 1), ...dump]],
  ["another format", "DAMAGED_DUMP", (dump) => [{ ...dump[0], format: "other" } as never, ...dump.slice(1)]],
  ["another version", "OTHER_VERSION", (dump) => [{ ...dump[0], version: 3 } as never, ...dump.slice(1)]],
  ["no trailer", "DAMAGED_DUMP", (dump) => dump.slice(0, -1)],
  ["more after the trailer", "DAMAGED_DUMP", (dump) => [...dump, ...dump.slice(-1)]],
  ["a record left out", "DAMAGED_DUMP", (dump) => dump.toSpliced(-2, 1)],
  [
    "a trailer that counts wrong",
    "DAMAGED_DUMP",
    (dump) => [...dump.slice(0, -1), { ...dump.at(-1), revisions: 3 } as never],
  ],
  [
    "a trailer of another dump",
    "DAMAGED_DUMP",
    (dump) => [...dump.slice(0, -1), { ...dump.at(-1), sha256: "0".repeat(64) } as never],
  ],
  [
    "a changed piece under the old trailer",
    "DAMAGED_DUMP",
    (dump) =>
      dump.map((record) =>
        isKept(record) ? withVersion(record, { changedAt: "2026-11-25T23:00:00.000Z" }) : record,
      ),
  ],
  ["the first revision left out", "DAMAGED_DUMP", (dump) => resealed(dump, (records) => records.slice(1))],
  [
    "revisions in another order",
    "DAMAGED_DUMP",
    (dump) => resealed(dump, ([one, two, ...rest]) => [two, one, ...rest] as Kept[]),
  ],
  [
    "a changed message",
    "DAMAGED_DUMP",
    (dump) =>
      resealed(dump, (records) => records.map((record) => withRevision(record, { message: "other" }))),
  ],
  [
    "a changed change",
    "DAMAGED_DUMP",
    (dump) =>
      resealed(dump, (records) =>
        records.map((record) =>
          record.kind === "revision" ? { ...record, change: adding(aTerm("tool.other")) } : record,
        ),
      ),
  ],
  [
    "a revision after the examinations",
    "DAMAGED_DUMP",
    (dump) => resealed(dump, ([one, two, ...rest]) => [one, ...rest, two] as Kept[]),
  ],
  [
    "a gap in the versions",
    "DAMAGED_DUMP",
    (dump) =>
      resealed(dump, (records) =>
        records.filter((record) => record.kind !== "examination" || record.examination.version !== 3),
      ),
  ],
  [
    "examinations out of order",
    "DAMAGED_DUMP",
    (dump) =>
      resealed(dump, (records) => {
        const [last, ...rest] = records.filter((record) => record.kind === "examination");
        return [
          ...records.filter((record) => record.kind === "revision"),
          ...rest,
          ...(last ? [last] : []),
          ...records.filter((record) => record.kind === "card" || record.kind === "write"),
        ];
      }),
  ],
  [
    "an undo to a later version",
    "DAMAGED_DUMP",
    (dump) => resealed(dump, (records) => records.map((record) => withVersion(record, { undoTo: 9 }))),
  ],
  [
    "a sound chain of changes that do not fit each other",
    "DAMAGED_DUMP",
    (dump) => {
      const change = replacing(aTerm("tool.none"), aTerm("tool.none", { note: "n" }));
      const revision = linkRevision(changeText(change), aCommit(change), undefined);
      return asVersionOne([
        { kind: "revision", change, revision },
        ...dump.filter((record) => record.kind === "examination"),
      ]);
    },
  ],
  [
    "a write left out of the ledger",
    "DAMAGED_DUMP",
    (dump) =>
      resealed(dump, (records) =>
        records.filter((record) => record.kind !== "write" || record.write.sequence !== 3),
      ),
  ],
  [
    "the newest write left out of the ledger",
    "DAMAGED_DUMP",
    (dump) => resealed(dump, (records) => records.slice(0, -1)),
  ],
  [
    "a deed done by another",
    "DAMAGED_DUMP",
    (dump) =>
      resealed(dump, (records) =>
        records.map((record) =>
          record.kind === "write" && record.write.deed
            ? { ...record, write: { ...record.write, deed: { ...record.write.deed, by: "person.b" } } }
            : record,
        ),
      ),
  ],
  [
    "a piece changed after it was kept",
    "DAMAGED_DUMP",
    (dump) =>
      resealed(dump, (records) =>
        records.map((record) => withVersion(record, { changedAt: "2026-11-25T23:00:00.000Z" })),
      ),
  ],
  [
    "a changed card",
    "DAMAGED_DUMP",
    (dump) => resealed(dump, (records) => records.map((record) => withCard(record, { body: "None." }))),
  ],
  [
    "a card left out",
    "DAMAGED_DUMP",
    (dump) =>
      resealed(dump, (records) =>
        records.filter((record) => record.kind !== "card" || record.card.id !== "one"),
      ),
  ],
  [
    "a card that nobody wrote",
    "DAMAGED_DUMP",
    (dump) =>
      resealed(dump, (records) =>
        records.flatMap((record) =>
          record.kind === "card" && record.card.id === "two"
            ? [record, withCard(record, { id: "three" })]
            : [record],
        ),
      ),
  ],
  [
    "cards in another order",
    "DAMAGED_DUMP",
    (dump) =>
      resealed(dump, (records) => {
        const cards = records.filter((record) => record.kind === "card").toReversed();
        const at = records.findIndex((record) => record.kind === "card");
        return records.toSpliced(at, cards.length, ...cards);
      }),
  ],
  [
    "a ledger in a dump of version 1",
    "DAMAGED_DUMP",
    (dump) => dump.map((record) => (record.kind === "header" ? { ...record, version: 1 } : record)),
  ],
];

/** Rules S8 and S9: dumps, whole or not at all. */
export function dumpGroup(open: () => Promise<Store>, runs: number): void {
  describe("dumps", () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });

    it("[S8] begins with a header, holds everything in its order, and ends with a trailer that fits", async () => {
      await fill(store);
      const dump = await dumpOf(store);
      expect(dump.map((record) => record.kind)).toEqual([
        "header",
        "revision",
        "revision",
        "examination",
        "examination",
        "examination",
        "examination",
        "examination",
        "card",
        "card",
        ...Array.from({ length: 8 }, () => "write"),
        "trailer",
      ]);
      const versions = dump.flatMap((record) =>
        record.kind === "examination" ? [`${record.examination.id} ${record.examination.version}`] : [],
      );
      expect(versions).toEqual(["examination.a 1", ...[1, 2, 3, 4].map((n) => `examination.b ${n}`)]);
      const sha256 = createHash("sha256").update(dump.slice(0, -1).map(dumpLine).join("")).digest("hex");
      expect(dump.at(-1)).toEqual({
        ...{ kind: "trailer", revisions: 2, examinations: 5 },
        ...{ cards: 2, writes: 8, sha256 },
      });
    });

    it("[S8] gives the same records again after a restore, also by way of another store", async () => {
      await fill(store);
      const dump = await dumpOf(store);
      const other = openMemoryStore();
      expect(await other.restore(dump)).toEqual({ records: RECORDS });
      const third = await open();
      expect(await third.restore(other.dump())).toEqual({ records: RECORDS });
      expect((await dumpOf(third)).map(dumpLine)).toEqual(dump.map(dumpLine));
      expect(await third.verify()).toEqual(await store.verify());
      expect(await third.examination(id("examination.b"))).toEqual(
        await store.examination(id("examination.b")),
      );
      expect(await third.listExaminations({ first: 9 })).toEqual(await store.listExaminations({ first: 9 }));
      expect(await third.search("saw", {}, 5)).toEqual(await store.search("saw", {}, 5));
      answered(await third.undoExamination(id("examination.b"), 4, "2026-11-25T11:00:00.000Z"));
      answered(await third.commit(aCommit(adding(aTerm("tool.plane")), { expected: 2 })));
    });

    it("[S8] [S47] restores a dump of version 1, from before cards and ledger, as one write", async () => {
      await fill(store);
      const old = asVersionOne(await dumpOf(store));
      const other = await open();
      expect(await other.restore(old)).toEqual({ records: old.length });
      expect(await other.writesAfter(0, 9)).toMatchObject([{ sequence: 1, revision: 2, restored: true }]);
      expect(answered(await other.verify())).toMatchObject({ revisions: 2 });
      expect(asVersionOne(await dumpOf(other))).toEqual(old);
      const third = openMemoryStore();
      answered(await third.restore(old));
      expect(await dumpOf(third)).toEqual(await dumpOf(other));
    });

    it("[S8] dumps and restores the empty store", async () => {
      const dump = await dumpOf(store);
      expect(dump.map((record) => record.kind)).toEqual(["header", "trailer"]);
      expect(await (await open()).restore(dump)).toEqual({ records: 2 });
    });

    it("[S8] shows one moment: what is written while it is read is not in it", async () => {
      await fill(store);
      const before = await dumpOf(store);
      const reading = store.dump()[Symbol.asyncIterator]();
      const records = [(await reading.next()).value as DumpRecord];
      answered(await store.commit(aCommit(adding(aTerm("tool.plane")))));
      answered(await store.createExamination(id("examination.z"), aPiece(), "2026-11-25T12:00:00.000Z"));
      for (let next = await reading.next(); !next.done; next = await reading.next()) records.push(next.value);
      expect(records).toEqual(before);
      expect(await dumpOf(store)).toHaveLength(before.length + 4);
    });

    it("[S8] lets go of a dump that is read in part only", async () => {
      await fill(store);
      for await (const record of store.dump()) if (record.kind === "revision") break;
      expect(await dumpOf(store)).toHaveLength(RECORDS);
    });

    it("[S8] dumps any history so that another store makes the same of it", async () => {
      await fc.assert(
        fc.asyncProperty(anyHistory, async ({ changes }) => {
          const [one, two] = [await open(), openMemoryStore()];
          for (const change of changes) answered(await one.commit(aCommit(change)));
          answered(await two.restore(one.dump()));
          expect((await dumpOf(two)).map(dumpLine)).toEqual((await dumpOf(one)).map(dumpLine));
          await one.close();
        }),
        { numRuns: runs },
      );
    });

    describe("[S9] a damaged dump is refused whole:", () => {
      it.each(damages)("%s", async (_, code, damage) => {
        const whole = openMemoryStore();
        await fill(whole);
        const damaged = damage(await dumpOf(whole));
        expect(refusedWith(await store.restore(damaged))).toBe(code);
        expect((await dumpOf(store)).map((record) => record.kind)).toEqual(["header", "trailer"]);
        expect(answered(await store.restore(whole.dump()))).toEqual({ records: RECORDS });
      });
    });

    it("[S9] writes nothing if reading the dump breaks off", async () => {
      const whole = openMemoryStore();
      await fill(whole);
      const [header, first] = await dumpOf(whole);
      async function* broken(): AsyncGenerator<DumpRecord> {
        yield header as DumpRecord;
        yield first as DumpRecord;
        throw new Error("the cable was pulled");
      }
      await expect(store.restore(broken())).rejects.toThrow("the cable was pulled");
      expect(await dumpOf(store)).toHaveLength(2);
      expect(await store.newestRevision()).toBeUndefined();
    });

    it("[S9] restores into an empty store only", async () => {
      await fill(store);
      const dump = await dumpOf(store);
      expect(refusedWith(await store.restore(dump))).toBe("STORE_NOT_EMPTY");
      const withPiece = await open();
      answered(await withPiece.createExamination(id("examination.z"), aPiece(), "2026-11-25T12:00:00.000Z"));
      expect(refusedWith(await withPiece.restore(dump))).toBe("STORE_NOT_EMPTY");
      expect(await dumpOf(withPiece)).toHaveLength(4);
      expect(await dumpOf(store)).toEqual(dump);
    });
  });
}
