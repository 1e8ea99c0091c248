import { describe, expect, it } from "vitest";
import { readSeedLines } from "./read-seed-lines.ts";
import { honestyRules } from "./rules/honesty-rules.ts";
import { lookingRules } from "./rules/looking-rules.ts";
import { modellingRules } from "./rules/modelling-rules.ts";
import { shapeRules } from "./rules/shape-rules.ts";
import { parseSeed } from "./seed-graph.ts";

const lines = readSeedLines();

describe("the lines of the seed", () => {
  it("are one JSON object each", () => {
    const bad = lines.filter(({ text }) => !isObject(text)).map(({ at }) => at);
    expect(bad).toEqual([]);
  });

  it("that are none are found out", () => {
    expect(['{"id":', "[]", "", "null", '"x"'].map(isObject)).toEqual([false, false, false, false, false]);
  });
});

describe.each([...shapeRules, ...honestyRules, ...modellingRules, ...lookingRules])(
  "$says",
  ({ find, brokenBy }) => {
    const seed = parseSeed(lines);

    it("holds of the seed", () => {
      expect(find(seed)).toEqual([]);
    });

    it.each(Object.entries(brokenBy))("does not hold with %s", (_, breakSeed) => {
      const broken = breakSeed(seed);
      expect(broken).not.toEqual(seed);
      expect(find(broken).length).toBeGreaterThan(find(seed).length);
    });
  },
);

function isObject(text: string): boolean {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "object" && value !== null && !Array.isArray(value);
  } catch {
    return false;
  }
}
