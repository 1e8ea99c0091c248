import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { openStandings } from "#server/again/open-standings.ts";
import { id } from "#server/domain/ids.ts";
import { isProblem } from "#server/domain/problem.ts";
import { type Shifts, shiftsBetween } from "#server/domain/shifts.ts";
import type { Verdicts } from "#server/domain/verdicts.ts";
import { previewChange } from "#server/use-cases/ask/preview-change.ts";
import { anyAct, anyBeginning, anyStoredPiece, changeOf } from "#tests/support/any-edits.ts";
import { aCommit } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { freshVerdicts } from "#tests/support/fresh-verdicts.ts";
import { graphOf, openActs } from "#tests/support/open-acts.ts";

/** Nothing is found otherwise, and yet a part is probably something else. */
const isOfStatesAlone = ({ findings, ruleOuts: { came, went }, parts, states }: Shifts): boolean =>
  states.length > 0 && findings.length + came.length + went.length + parts.length === 0;

describe("what a change would do", () => {
  it("[K10] is what examining everything before and after it shows, whether or not it was examined again by then", async () => {
    let [shiftedAll, ofStatesAlone, made] = [0, 0, 0];
    await fc.assert(
      fc.asyncProperty(
        anyBeginning,
        fc.array(anyStoredPiece, { minLength: 3, maxLength: 3 }),
        fc.array(anyAct, { minLength: 1, maxLength: 6 }),
        fc.boolean(),
        async (beginning, pieces, acts, settles) => {
          const { store, now } = await openActs(beginning);
          const names = pieces.map((_, n) => id<"examination">(`examination.e${n}`));
          for (const [n, piece] of pieces.entries())
            answered(await store.createExamination(names[n] as (typeof names)[0], piece, now()));
          const standings = openStandings({ store, log: () => {}, restAfter: () => 0 });
          let told = await store.newestWrite();
          for (const act of acts) {
            if (settles) await standings.settled();
            const change = changeOf(act, await graphOf(store));
            const preview = await previewChange({ store, standings }, change);
            const before = await Promise.all(pieces.map((piece) => freshVerdicts(store, piece)));
            if (isProblem(await store.commit(aCommit(change, { at: now() })))) continue;
            made++;
            const after = await Promise.all(pieces.map((piece) => freshVerdicts(store, piece)));
            const expected = names.flatMap((name, n) => {
              const shifts = shiftsBetween(before[n] as Verdicts, after[n] as Verdicts);
              return shifts ? [{ name, shifts }] : [];
            });
            expect(
              preview.shifted.map(({ examination, shifts }) => ({ name: examination.id, shifts })),
            ).toEqual(expected);
            expect(preview.left).toBe(0);
            shiftedAll += expected.length;
            ofStatesAlone += expected.filter(({ shifts }) => isOfStatesAlone(shifts)).length;
            for (const written of await store.writesAfter(told, 9)) await standings.follow(written);
            told = await store.newestWrite();
          }
          await standings.stop();
        },
      ),
      { numRuns: 120 },
    );
    expect(made).toBeGreaterThan(100);
    expect(shiftedAll).toBeGreaterThan(50);
    expect(ofStatesAlone).toBeGreaterThan(3);
  });
});
