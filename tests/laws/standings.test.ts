import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { openStandings } from "#server/again/open-standings.ts";
import { type ExaminationId, id } from "#server/domain/ids.ts";
import { shiftsBetween } from "#server/domain/shifts.ts";
import { followWrites } from "#server/follower/follow-writes.ts";
import { anyAct, anyBeginning, anyStoredPiece } from "#tests/support/any-edits.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { freshVerdicts } from "#tests/support/fresh-verdicts.ts";
import { openActs } from "#tests/support/open-acts.ts";

const names = ["examination.a", "examination.b", "examination.c"].map((name) => id<"examination">(name));
const anyStep = fc.oneof(
  { weight: 3, arbitrary: anyAct.map((act) => ({ act })) },
  { weight: 1, arbitrary: fc.record({ name: fc.constantFrom(...names), piece: anyStoredPiece }) },
  { weight: 1, arbitrary: fc.record({ name: fc.constantFrom(...names), deletes: fc.boolean() }) },
  { weight: 1, arbitrary: fc.record({ waits: fc.constant(true) }) },
  { weight: 1, arbitrary: fc.record({ looks: fc.constantFrom(...names) }) },
);

describe("stored examinations", () => {
  it("[K5] [K6] [K7] stand at last as if each were examined anew, whatever was changed while they were", async () => {
    let shifted = 0;
    await fc.assert(
      fc.asyncProperty(
        anyBeginning,
        fc.array(anyStoredPiece, { minLength: 2, maxLength: 2 }),
        fc.array(anyStep, { maxLength: 12 }),
        async (beginning, pieces, steps) => {
          const { store, act, now } = await openActs(beginning);
          /** The revision on which each was last changed. */
          const changedOn = new Map<ExaminationId, number>();
          const newest = async () => (await store.newestRevision())?.number ?? 0;
          for (const [n, piece] of pieces.entries()) {
            answered(await store.createExamination(names[n] as ExaminationId, piece, now()));
            changedOn.set(names[n] as ExaminationId, await newest());
          }
          const after = await store.newestWrite();
          const failures: unknown[] = [];
          const log = (line: unknown) => void failures.push(line);
          const standings = openStandings({ store, log, restAfter: () => 0 });
          const follower = followWrites(store, [standings.follow], { after, every: 1, log });
          for (const step of steps) {
            if ("act" in step) await act(step.act);
            else if ("waits" in step) await standings.settled();
            else if ("looks" in step) standings.looked(step.looks);
            else {
              const standing = await store.examination(step.name);
              const version = standing?.version ?? 0;
              if (standing === undefined) {
                if ("piece" in step) await store.createExamination(step.name, step.piece, now());
              } else if ("piece" in step)
                await store.changeExamination(step.name, version, step.piece, now());
              else if (step.deletes) await store.deleteExamination(step.name, version, now());
              else await store.undoExamination(step.name, version, now());
              if ((await store.examination(step.name))?.version !== standing?.version)
                changedOn.set(step.name, await newest());
            }
            follower.nudge();
            if (Math.abs(steps.length % 2) === 1) await new Promise((resolve) => setImmediate(resolve));
          }
          expect(await follower.reach(await store.newestWrite(), 5_000)).toBe(true);
          await standings.settled();
          for (const name of names) {
            const stored = await store.examination(name);
            const standing = standings.find(name);
            if (stored === undefined || stored.deleted) {
              expect(standing).toBeUndefined();
              continue;
            }
            const on = changedOn.get(name) as number;
            expect(standing).toMatchObject({ version: stored.version, upToDate: true });
            expect(standing?.verdicts).toEqual(await freshVerdicts(store, stored.piece));
            expect(standing?.since).toMatchObject({
              revision: on,
              verdicts: await freshVerdicts(store, stored.piece, on),
            });
            if (standing?.since.isSame) expect(standing.since.verdicts).toEqual(standing.verdicts);
            if (standing && shiftsBetween(standing.since.verdicts, standing.verdicts)) shifted++;
          }
          expect(failures).toEqual([]);
          await follower.stop();
          await standings.stop();
        },
      ),
      { numRuns: 200 },
    );
    expect(shifted).toBeGreaterThan(20);
  });
});
