import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readDating } from "#server/domain/dating.ts";
import { isProblem } from "#server/domain/problem.ts";
import { anyDate, anyDatingText } from "#tests/support/any-dating.ts";
import { isKnown, KNOWN_DIFFERENCES } from "./known-differences.ts";
import { boundsOf, compare, LIBRARIES, ourBounds } from "./libraries.ts";

// Outside check: the packages edtf 4.11.1 and @edtf-ts/core 0.4.2, two independent readers of ISO 8601-2:2019.

describe.each(KNOWN_DIFFERENCES)(
  "the known difference of $library: it $difference $example",
  ({ library, difference, example, covers }) => {
    it("is still there", () => {
      expect(compare(library, example)).toBe(difference);
      expect(covers(example)).toBe(true);
    });
  },
);

describe.each(LIBRARIES)("beside %s", (library) => {
  it("[D4][D5][D7][D8][D9][D13][D15] every string of our profile has the same years, but for the known differences", () => {
    let [compared, agreeing] = [0, 0];
    fc.assert(
      fc.property(anyDatingText, (text) => {
        const difference = compare(library, text);
        compared++;
        if (difference === "agrees" && ourBounds(text)) agreeing++;
        else if (difference !== "agrees" && !isKnown(library, difference, text))
          throw new Error(
            `${library} ${difference}: ${text}: ${boundsOf(library, text)} against ${ourBounds(text)}`,
          );
      }),
      { numRuns: 4000 },
    );
    // The known differences must not swallow the check.
    expect(agreeing / compared).toBeGreaterThan(0.4);
  });

  it("[D4] a date by itself has the same years", () => {
    let agreeing = 0;
    fc.assert(
      fc.property(anyDate, (text) => {
        const difference = compare(library, text);
        if (difference === "agrees") agreeing++;
        expect(difference === "agrees" || isKnown(library, difference, text)).toBe(true);
      }),
      { numRuns: 1000 },
    );
    expect(agreeing).toBeGreaterThan(400);
  });
});

/** A stream of numbers from 0 to 1 that is the same in every run (xorshift, Marsaglia 2003). */
function steadyRandom(seed: number): () => number {
  let state = seed;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}

async function stringsFromGrammar(level: 0 | 1 | 2, count: number): Promise<readonly string[]> {
  const random = Math.random;
  // The generator keeps the Math.random it finds when it is first loaded.
  Math.random = steadyRandom(level + 2463534242);
  try {
    const { sample } = await import("edtf/sample");
    return [...sample({ count, level })];
  } finally {
    Math.random = random;
  }
}

describe.each([0, 1, 2] as const)("strings made from the grammar of edtf at level %i", (level) => {
  it("are read with the years that edtf gives, or refused for a known reason", async () => {
    const texts = await stringsFromGrammar(level, 600);
    expect(texts).toHaveLength(600);
    const unexplained = texts.filter((text) => {
      const difference = compare("edtf", text);
      return difference !== "agrees" && !isKnown("edtf", difference, text);
    });
    expect(unexplained).toEqual([]);
    // A refusal is always a problem with a sentence, never a crash.
    for (const text of texts) {
      const dating = readDating(text, "event");
      if (isProblem(dating)) expect(dating.message).toMatch(/^The date ".*" cannot be read: /);
    }
  });
});
