import { describe, expect, it } from "vitest";
import { likelihoodOf, likelyStateOf } from "#server/domain/weighing/likely-state.ts";

const odds = (original: number, later: number, reused = 0, reworked = 0) => ({
  ...{ original, later, reused, reworked },
});
const ASSUMED = odds(0.6, 0.4);

describe("[K12] what a part most probably is", () => {
  it.each([
    [1, "very probable"],
    [0.95, "very probable"],
    [0.949, "probable"],
    [0.75, "probable"],
    [0.749, "more likely than not"],
    [0.5, "more likely than not"],
    [0.499, "possible"],
    [0, "possible"],
  ])("has a step for its probability: %f is %s", (p, step) => {
    expect(likelihoodOf(p)).toBe(step);
  });

  it("is its likeliest state, of ties the first, and whether something seen tells", () => {
    expect(likelyStateOf(odds(0.5, 0.5), ASSUMED)).toEqual({
      ...{ state: "original", likelihood: "more likely than not", tells: true },
    });
    expect(likelyStateOf(odds(0.2, 0.8), ASSUMED)).toMatchObject({ state: "later", likelihood: "probable" });
    expect(likelyStateOf(odds(0.604, 0.396), ASSUMED)).toMatchObject({ tells: false });
    expect(likelyStateOf(odds(0.605, 0.395), ASSUMED)).toMatchObject({ tells: true });
  });

  it("is one object wherever it is the same, so that it is the same by identity", () => {
    expect(likelyStateOf(odds(0.8, 0.2), ASSUMED)).toBe(likelyStateOf(odds(0.9, 0.1), ASSUMED));
    expect(likelyStateOf(odds(0.8, 0.2), ASSUMED)).not.toBe(likelyStateOf(odds(0.96, 0.04), ASSUMED));
  });
});
