import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import { isProblem } from "#server/domain/problem.ts";
import { askFor } from "#server/reasoning/ask-for.ts";
import { verdictsOn } from "#server/reasoning/verdicts-on.ts";
import { readSeed } from "#server/seed/read-seed.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { anyAct, anyBeginning, anyStoredPiece } from "#tests/support/any-edits.ts";
import { aCommit } from "#tests/support/build-change.ts";
import { wholeVerdicts } from "#tests/support/fresh-verdicts.ts";
import { openActs } from "#tests/support/open-acts.ts";

describe("what a piece comes to", () => {
  it("[K7] is what its report says, without what it rests on, and what the weighing says of its parts", async () => {
    await fc.assert(
      fc.asyncProperty(
        anyBeginning,
        anyStoredPiece,
        fc.array(anyAct, { maxLength: 5 }),
        async (beginning, piece, acts) => {
          const { store, act } = await openActs(beginning);
          for (const each of acts) await act(each);
          const neighbourhood = await store.neighbourhood(askFor(piece, ASSUMED));
          const verdicts = verdictsOn(piece, neighbourhood);
          fc.pre(verdicts.fits);
          expect(verdicts).toEqual(wholeVerdicts(piece, neighbourhood));
        },
      ),
      { numRuns: 300 },
    );
  });

  it("[K7] is so for the demonstrations on the seed graph", async () => {
    const seed = await readSeed(fileURLToPath(new URL("../../../seed-data", import.meta.url)));
    if (isProblem(seed)) throw new Error(seed.message);
    const store = openMemoryStore();
    if (isProblem(await store.commit(aCommit(seed.change)))) throw new Error("The seed is refused");
    for (const { piece } of seed.pieces) {
      const neighbourhood = await store.neighbourhood(askFor(piece, ASSUMED));
      const verdicts = verdictsOn(piece, neighbourhood);
      expect(verdicts).toEqual(wholeVerdicts(piece, neighbourhood));
      expect(verdicts.findings.length).toBeGreaterThan(5);
    }
    expect(seed.pieces.length).toBeGreaterThan(3);
  });
});
