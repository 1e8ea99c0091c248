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

describe("what a rule finds", () => {
  it("is said with file and line", () => {
    expect(placed("tool.pit-saw has a field brooder")).toMatch(
      /^terms\/sawing\.jsonl:\d+ tool\.pit-saw has a field brooder$/,
    );
  });
});

/** A finding with the file and line of the first thing it names. */
function placed(finding: string): string {
  const [id] = /\b[a-z-]+\.[A-Za-z0-9-]+/.exec(finding) ?? [];
  const line = lines.find(({ text }) => id !== undefined && (JSON.parse(text) as { id: string }).id === id);
  return `${line?.at ?? "seed-data"} ${finding}`;
}

function isObject(text: string): boolean {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "object" && value !== null && !Array.isArray(value);
  } catch {
    return false;
  }
}
