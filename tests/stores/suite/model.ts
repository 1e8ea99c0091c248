import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Change } from "#server/domain/change.ts";
import { id } from "#server/domain/ids.ts";
import type { Term } from "#server/domain/term.ts";
import type { WriteNote } from "#server/domain/written.ts";
import type { Store } from "#server/ports/store.ts";
import { aCommit, adding, aTerm, replacing, withdrawing } from "#tests/support/build-change.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { plainWrites } from "#tests/support/plain-writes.ts";

/** What the store should hold, as plainly as it can be said. */
interface Model {
  /** Notes by term, after each revision; the first is the empty graph. */
  readonly graphs: Map<string, string>[];
  /** The titles of all versions; `undo` holds the titles that further undos go back to. */
  readonly examinations: Map<string, { versions: string[]; undo: string[]; deleted: boolean }>;
  /** What each accepted write made. */
  readonly writes: WriteNote[];
}
type Command = fc.AsyncCommand<Model, Store>;

const termOf = (name: string, note: string): Term => aTerm(name, { note });
const titled = (title: string) => ({ ...aPiece(), title });
const at = "2026-11-25T10:00:00.000Z";
const newest = (model: Model) => model.graphs.at(-1) as Map<string, string>;
const outcome = (answer: object): unknown =>
  "problem" in answer ? (answer as { code?: string }).code : "done";

/** Puts a note on a term, new or not, as seen by somebody who last looked at revision `seen`. */
const write = (name: string, note: string, seen: number): Command => ({
  check: () => true,
  run: async (model, store) => {
    const known = model.graphs[Math.min(seen, model.graphs.length - 1)]?.get(name);
    const stands = newest(model).get(name);
    const after = termOf(name, note);
    const change: Change = known === undefined ? adding(after) : replacing(termOf(name, known), after);
    expect(outcome(await store.commit(aCommit(change)))).toBe(known === stands ? "done" : "STALE_CHANGE");
    if (known !== stands) return;
    model.graphs.push(new Map(newest(model)).set(name, note));
    model.writes.push({ revision: model.graphs.length - 1 });
  },
  toString: () => `write(${name}, ${note}, seen ${seen})`,
});

const withdraw = (name: string): Command => ({
  check: (model) => newest(model).has(name),
  run: async (model, store) => {
    const stands = newest(model).get(name) as string;
    expect(outcome(await store.commit(aCommit(withdrawing(termOf(name, stands)))))).toBe("done");
    const next = new Map(newest(model));
    next.delete(name);
    model.graphs.push(next);
    model.writes.push({ revision: model.graphs.length - 1 });
  },
  toString: () => `withdraw(${name})`,
});

const readAt = (share: number): Command => ({
  check: () => true,
  run: async (model, store) => {
    const revision = Math.floor(share * (model.graphs.length - 1));
    const page = await store.listTerms({}, { first: 200 }, revision);
    expect(page.rows).toEqual(
      [...(model.graphs[revision] ?? [])].sort().map(([name, note]) => termOf(name, note)),
    );
  },
  toString: () => `readAt(${share})`,
});

type ExaminationWrite = "create" | "change" | "undo" | "delete";
const examine = (name: string, does: ExaminationWrite, title: string, behind: number): Command => ({
  check: () => true,
  run: async (model, store) => {
    const known = model.examinations.get(name);
    const on = (known?.versions.length ?? 0) - behind;
    const key = id<"examination">(name);
    const answer = await {
      create: () => store.createExamination(key, titled(title), at),
      change: () => store.changeExamination(key, on, titled(title), at),
      undo: () => store.undoExamination(key, on, at),
      delete: () => store.deleteExamination(key, on, at),
    }[does]();
    const wanted = expected();
    expect(outcome(answer)).toBe(wanted);
    const stored = await store.examination(key);
    const now = model.examinations.get(name);
    if (wanted === "done")
      model.writes.push({ examination: { id: key, version: now?.versions.length ?? 0 } });
    expect(stored && [stored.version, stored.piece.title, stored.deleted]).toEqual(
      now && [now.versions.length, now.versions.at(-1), now.deleted],
    );

    function expected(): string {
      if (does === "create") {
        if (known) return "DUPLICATE_ID";
        model.examinations.set(name, { versions: [title], undo: [], deleted: false });
        return "done";
      }
      if (!known) return "UNKNOWN_EXAMINATION";
      if (behind > 0) return "CHANGED_MEANWHILE";
      const now = known.versions.at(-1) as string;
      if (does === "undo") {
        const back = known.undo.pop();
        if (back === undefined) return "NOTHING_TO_UNDO";
        known.versions.push(back);
        known.deleted = false;
        return "done";
      }
      if (known.deleted) return "UNKNOWN_EXAMINATION";
      known.undo.push(now);
      known.versions.push(does === "delete" ? now : title);
      known.deleted = does === "delete";
      return "done";
    }
  },
  toString: () => `${does}(${name}, ${title}, ${behind} behind)`,
});

const follow = (share: number, first: number): Command => ({
  check: () => true,
  run: async ({ writes }, store) => {
    const from = Math.floor(share * writes.length);
    const numbered = writes.map((written, index) => ({ sequence: index + 1, ...written }));
    expect(await store.newestWrite()).toBe(writes.length);
    expect(plainWrites(await store.writesAfter(from, first))).toEqual(numbered.slice(from, from + first));
  },
  toString: () => `follow(${share}, ${first})`,
});

const name = fc.constantFrom("tool.a", "tool.b", "tool.c");
const word = fc.constantFrom("one", "two", "three");
const piece = fc.constantFrom("examination.a", "examination.b");
const commands = fc.commands(
  [
    fc.tuple(name, word, fc.oneof(fc.nat(8), fc.constant(99))).map((args) => write(...args)),
    name.map(withdraw),
    fc.double({ min: 0, max: 1, noNaN: true }).map(readAt),
    fc
      .tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.integer({ min: 1, max: 20 }))
      .map((args) => follow(...args)),
    fc
      .tuple(
        piece,
        fc.constantFrom<ExaminationWrite>("create", "change", "change", "undo", "undo", "delete"),
        word,
        fc.constantFrom(0, 0, 0, 1),
      )
      .map((args) => examine(...args)),
  ],
  { maxCommands: 40 },
);

/** Rules S1, S2, S7 and S46 over any order of writes, against a model of plain maps. */
export function modelGroup(open: () => Promise<Store>, runs: number): void {
  describe("any order of writes", () => {
    it("[S1] [S2] [S7] [S46] leaves what a plain model holds", async () => {
      await fc.assert(
        fc.asyncProperty(commands, async (sequence) => {
          const real = await open();
          const model: Model = { graphs: [new Map()], examinations: new Map(), writes: [] };
          await fc.asyncModelRun(() => ({ model, real }), sequence);
          expect(await real.verify()).toMatchObject({ revisions: model.graphs.length - 1 });
          expect((await real.listExaminations({ first: 200 })).total).toBe(
            [...model.examinations.values()].filter(({ deleted }) => !deleted).length,
          );
          await real.close();
        }),
        { numRuns: runs },
      );
    });
  });
}
