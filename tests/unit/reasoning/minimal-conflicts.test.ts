import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { explain, minimalConflicts, type Steps } from "#server/reasoning/rule-outs/minimal-conflicts.ts";
import { cutLine, isNone, keepCommon, meets } from "#server/reasoning/rule-outs/year-line.ts";

const SIZE = 8;
const UNTIL = 2000;
const steps = (asked = 10_000, decisions = 1_000_000): Steps => ({ asked, decisions });

function findAll(
  question: Parameters<typeof minimalConflicts>[0],
  within = steps(),
): { conflicts: readonly (readonly number[])[]; isThrough: boolean } {
  const conflicts: (readonly number[])[] = [];
  const search = minimalConflicts(question, within);
  for (;;) {
    const step = search.next();
    if (step.done) return { conflicts, isThrough: step.value };
    conflicts.push(step.value);
  }
}
const texts = (sets: readonly (readonly number[])[]): string[] =>
  sets.map((set) => [...set].sort((a, b) => a - b).join(" ")).sort();

/** What does not hold: every set that has all of one of these. The conflicts are those of them that have no other in them. */
const forbidden = fc.array(fc.uniqueArray(fc.nat(SIZE - 1), { minLength: 1, maxLength: 5 }), {
  maxLength: 9,
});
const holdsUnder = (sets: readonly (readonly number[])[]) => (members: readonly number[]) =>
  !sets.some((set) => set.every((member) => members.includes(member)));
const least = (sets: readonly (readonly number[])[]) =>
  sets.filter(
    (set, i) =>
      !sets.some(
        (other, j) =>
          i !== j && other.every((member) => set.includes(member)) && (other.length < set.length || j < i),
      ),
  );

describe("a search for minimal conflicts", () => {
  it("[E26][E27] finds each of them once", () => {
    fc.assert(
      fc.property(forbidden, (sets) => {
        const { conflicts, isThrough } = findAll({ size: SIZE, holds: holdsUnder(sets), known: [] });
        expect(texts(conflicts)).toEqual(texts(least(sets)));
        expect(isThrough).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  it("[E27] finds nothing that has a known one in it", () => {
    fc.assert(
      fc.property(forbidden, (sets) => {
        const all = least(sets);
        const known = all.slice(0, 2);
        const { conflicts } = findAll({ size: SIZE, holds: holdsUnder(sets), known });
        expect(texts(conflicts)).toEqual(texts(all.slice(2)));
      }),
      { numRuns: 200 },
    );
  });

  it("[E27] says that it is not through when it is out of steps", () => {
    const pairs = Array.from({ length: 20 }, (_, n) => [2 * n, 2 * n + 1]);
    const question = { size: 40, holds: holdsUnder(pairs), known: [] };
    const { conflicts, isThrough } = findAll(question, steps(30));
    expect(isThrough).toBe(false);
    expect(conflicts.length).toBeGreaterThan(0);
    expect(findAll(question, steps(10_000, 100)).isThrough).toBe(false);
  });

  it("[E35] explains by the members that come first, where there is a choice", () => {
    const holds = holdsUnder([
      [0, 5],
      [1, 2, 3],
      [6, 7],
    ]);
    expect(explain([0, 1, 2, 3, 4, 5, 6, 7], holds)).toEqual([1, 2, 3]);
    expect(explain([0, 1, 2, 4, 5, 6, 7], holds)).toEqual([0, 5]);
  });

  it("[E25] finds single windows and pairs, and nothing else, where no window has a gap", () => {
    const window = fc
      .tuple(fc.integer({ min: 1700, max: 1760 }), fc.integer({ min: 0, max: 40 }))
      .map(([first, length]) => [first, first + length] as const);
    let found = 0;
    fc.assert(
      fc.property(fc.array(window, { minLength: 2, maxLength: 9 }), (windows) => {
        const line = cutLine(
          windows.map((span) => [span]),
          UNTIL,
        );
        const bits = windows.map((span) => line.bitsOf([span]));
        const { conflicts } = findAll({
          size: windows.length,
          holds: (members) => {
            const left = line.all.slice();
            for (const member of members) keepCommon(left, bits[member] as Uint32Array);
            return !isNone(left);
          },
          known: [],
        });
        const apart = windows.flatMap(([a0, a1], i) =>
          windows.flatMap(([b0, b1], j) => (i < j && (a1 < b0 || b1 < a0) ? [[i, j]] : [])),
        );
        expect(texts(conflicts)).toEqual(texts(apart));
        for (const [i, j] of apart)
          expect(meets(bits[i as number] as Uint32Array, bits[j as number] as Uint32Array)).toBe(false);
        found += apart.length;
      }),
      { numRuns: 300 },
    );
    expect(found).toBeGreaterThan(300);
  });
});
