import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { buildArrays } from "#server/stores/mirror/build-arrays.ts";
import { patchArrays } from "#server/stores/mirror/patch-arrays.ts";
import { neighbourhoodReader } from "#server/stores/mirror/read-neighbourhood.ts";
import { rowsOf } from "#server/stores/mirror/rows-of.ts";
import { walkEdits } from "#server/stores/mirror/walk-edits.ts";
import { anyAsk, anyHistory } from "#tests/support/any-history.ts";
import { aCommit, adding, aTerm, withdrawing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { answered } from "#tests/support/expect-answer.ts";

const built = (store: Store, at: number) => buildArrays(store.walkBlocks(at), at);
const caches = { claims: 4, terms: 4 };

describe("arrays that are patched", () => {
  it("[S53] say after each change, and answer, what arrays built anew do", async () => {
    await fc.assert(
      fc.asyncProperty(
        anyHistory,
        fc.array(anyAsk, { minLength: 1, maxLength: 6 }),
        fc.nat(3),
        async (history, asks, from) => {
          const store = openMemoryStore();
          for (const change of history.changes) answered(await store.commit(aCommit(change)));
          const begin = Math.min(from, history.changes.length);
          const patched = await built(store, begin);
          const reader = neighbourhoodReader(patched, store, caches);
          for (const [i, change] of history.changes.slice(begin).entries()) {
            // What was read before stays in the cache where the change does not touch it.
            for (const ask of asks) await reader.read(ask);
            const edits = walkEdits(change);
            patchArrays(patched, begin + i + 1, edits);
            reader.forget(edits);
            const anew = await built(store, begin + i + 1);
            expect(rowsOf(patched)).toEqual(rowsOf(anew));
            const fresh = neighbourhoodReader(anew, store, caches);
            for (const ask of asks) expect(await reader.read(ask)).toEqual(await fresh.read(ask));
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  it("[S53] refuse a change that does not come next, or does not fit", async () => {
    const store = openMemoryStore();
    const mark = aTerm("feature.mark");
    const saw = aTerm("tool.saw");
    const needs = aClaim({ id: "claim.1", relation: "requires", subject: mark.id, ways: [[saw.id]] });
    const except = aClaim({ id: "claim.2", relation: "void when", of: needs.id, condition: mark.id });
    answered(await store.commit(aCommit(adding(mark, saw))));
    const arrays = await built(store, 1);
    expect(() => patchArrays(arrays, 3, walkEdits(adding(needs)))).toThrow("does not follow");
    expect(() => patchArrays(arrays, 2, walkEdits(withdrawing(needs)))).toThrow("not in the arrays");
    const other = await built(store, 1);
    patchArrays(other, 2, walkEdits(adding(needs)));
    expect(() => patchArrays(other, 3, walkEdits(withdrawing(except)))).toThrow("not in the arrays");
    const empty = await built(store, 0);
    expect(() => patchArrays(empty, 1, walkEdits(adding(needs)))).toThrow("not in the arrays");
  });
});
