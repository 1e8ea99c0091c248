import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { digestNeighbourhood } from "#server/again/digest-neighbourhood.ts";
import { keepResults } from "#server/again/keep-results.ts";
import { ASSUMED } from "#server/domain/assumptions.ts";
import { canonicalJson } from "#server/domain/canonical-json.ts";
import { askFor } from "#server/reasoning/ask-for.ts";
import { examine } from "#server/reasoning/examine.ts";
import { anyAct, anyBeginning, anyStoredPiece } from "#tests/support/any-edits.ts";
import { openActs } from "#tests/support/open-acts.ts";

const RUNS = 150;
const anyPieces = fc.array(anyStoredPiece, { minLength: 1, maxLength: 4 });
const anyActs = fc.array(anyAct, { minLength: 1, maxLength: 8 });

describe("answers that are kept", () => {
  it("[K1] [K2] are the bytes of answers worked out anew, whatever is changed in between", async () => {
    let [hits, misses] = [0, 0];
    await fc.assert(
      fc.asyncProperty(anyBeginning, anyPieces, anyActs, async (beginning, pieces, acts) => {
        const { store, act } = await openActs(beginning);
        const results = keepResults();
        for (const next of [undefined, ...acts]) {
          if (next) await act(next);
          for (const piece of pieces) {
            const neighbourhood = await store.neighbourhood(askFor(piece, ASSUMED));
            const kept = results.report(piece, neighbourhood);
            expect(canonicalJson(kept)).toBe(canonicalJson(examine(piece, neighbourhood)));
            expect(kept.revision).toBe(neighbourhood.revision);
          }
        }
        hits += results.counts.hits;
        misses += results.counts.misses;
      }),
      { numRuns: RUNS },
    );
    expect(hits).toBeGreaterThan(misses / 4);
    expect(misses).toBeGreaterThan(RUNS);
  });

  it("[K1] have another digest wherever the engine would say something else", async () => {
    await fc.assert(
      fc.asyncProperty(anyBeginning, anyStoredPiece, anyActs, async (beginning, piece, acts) => {
        const { store, act } = await openActs(beginning);
        const saidBy = new Map<string, string>();
        for (const next of [undefined, ...acts]) {
          if (next) await act(next);
          const neighbourhood = await store.neighbourhood(askFor(piece, ASSUMED));
          const said = canonicalJson({ ...examine(piece, neighbourhood), revision: 0 });
          const digest = digestNeighbourhood(neighbourhood);
          expect(saidBy.get(digest) ?? said).toBe(said);
          saidBy.set(digest, said);
        }
      }),
      { numRuns: RUNS },
    );
  });
});
