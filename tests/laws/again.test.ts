import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { digestNeighbourhood } from "#server/again/digest-neighbourhood.ts";
import { openImpactIndex } from "#server/again/impact-index.ts";
import { keepResults } from "#server/again/keep-results.ts";
import { readsOf } from "#server/again/reads-of.ts";
import { claimsAround, touchOf } from "#server/again/touch-of.ts";
import { ASSUMED } from "#server/domain/assumptions.ts";
import { canonicalJson } from "#server/domain/canonical-json.ts";
import type { ExaminationId } from "#server/domain/ids.ts";
import { askFor } from "#server/reasoning/ask-for.ts";
import { partOddsOn } from "#server/reasoning/dates/part-odds.ts";
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
          const report = { ...examine(piece, neighbourhood), revision: 0 };
          const said = canonicalJson([report, partOddsOn(piece, neighbourhood)]);
          const digest = digestNeighbourhood(neighbourhood);
          expect(saidBy.get(digest) ?? said).toBe(said);
          saidBy.set(digest, said);
        }
      }),
      { numRuns: RUNS },
    );
  });
});

describe("what a change touches", () => {
  it("[K4] is found by the terms that were read, and holds every examination whose answer is another", async () => {
    let [touchedAll, changedAll, asked] = [0, 0, 0];
    const depth = fc.constantFrom(1, 2, ASSUMED.maxDepth);
    await fc.assert(
      fc.asyncProperty(anyBeginning, anyPieces, anyActs, depth, async (beginning, pieces, acts, maxDepth) => {
        const { store, act } = await openActs(beginning);
        const index = openImpactIndex();
        const named = pieces.map((piece, n) => ({ piece, id: `examination.e${n}` as ExaminationId }));
        const digests = new Map<ExaminationId, string>();
        const walk = async ({ piece, id }: (typeof named)[number]): Promise<boolean> => {
          const ask = { ...askFor(piece, ASSUMED), maxDepth };
          const neighbourhood = await store.neighbourhood(ask);
          const digest = digestNeighbourhood(neighbourhood);
          const isOther = digests.get(id) !== digest;
          digests.set(id, digest);
          // What is not changed is not put in again: the index must hold for it as it is.
          if (isOther) index.put(id, readsOf(neighbourhood, ask));
          return isOther;
        };
        for (const each of named) await walk(each);
        for (const next of acts) {
          const change = await act(next);
          if (change === undefined) continue;
          const touched = index.touchedBy(await touchOf(change, claimsAround(store)));
          for (const each of named) {
            const isOther = await walk(each);
            if (isOther) expect(touched).toContain(each.id);
            changedAll += Number(isOther);
          }
          touchedAll += touched.size;
          asked += named.length;
        }
      }),
      { numRuns: 400 },
    );
    // It says something: not everything, and little beside what did change.
    expect(changedAll).toBeGreaterThan(100);
    expect(touchedAll).toBeLessThan(asked * 0.9);
    expect(touchedAll / changedAll).toBeLessThan(1.25);
  });
});
