import { describe, expect, it } from "vitest";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import type { Mends } from "#server/domain/weighing/mends.ts";
import { randomSource } from "#server/generator/random-source.ts";
import { readMends } from "#server/reasoning/mends/read-mends.ts";
import type { ClaimSketch } from "#tests/support/build-claim.ts";
import { listedTexts, mendSketch, subjectOfSketch } from "#tests/support/mend-sketch.ts";

/** Nothing that JSON cannot carry, and a bound that keeps its word. */
function expectSane(mends: Mends): void {
  expect(JSON.parse(JSON.stringify(mends))).toEqual(mends);
  expect(mends.best).toBeDefined();
  expect(Number.isInteger(mends.best?.price)).toBe(true);
  expect(mends.lowerBound).toBeLessThanOrEqual(mends.best?.price ?? Number.NaN);
  if (mends.proved) expect(mends.lowerBound).toBe(mends.best?.price);
}

function large(parts: number, observations: number, date: string, seed = 5) {
  const random = randomSource(seed);
  const claims: ClaimSketch[] = Array.from({ length: 150 }, (_, n) => {
    const year = 1500 + random.below(450);
    const relation = random.pick(["introduced", "discontinued", "current"] as const);
    return {
      ...{ id: `c${n}`, relation, subject: `f${n}`, hardness: "physical" },
      when: relation === "current" ? `${year}/${year + random.below(80)}` : `${year}`,
    };
  });
  return subjectOfSketch(claims, {
    date,
    observations: Array.from({ length: observations }, (_, n) => ({
      ...{ id: `o${n}`, part: `p${n % parts}`, feature: `f${random.below(150)}` },
    })),
  });
}

describe("mends of what is hard to mend", () => {
  it("[M13] says that each sighting is misread, or the claim wrong, where no year is left to any", () => {
    const nowhere: ClaimSketch[] = [
      { id: "a", relation: "confined to", subject: "A", regions: ["south"], hardness: "physical" },
      { id: "b", relation: "confined to", subject: "B", regions: ["south"], hardness: "physical" },
    ];
    const { possible } = mendSketch(nowhere, {
      region: "town",
      observations: [
        { id: "o1", part: "top", feature: "A" },
        { id: "o2", part: "top", feature: "B" },
      ],
    });
    expectSane(possible);
    expect(listedTexts(possible)).toEqual([
      "2558 a + b",
      "2969 a + misread(o2)",
      "2969 b + misread(o1)",
      "3380 misread(o1) + misread(o2)",
    ]);
    expect(possible.movedDate).toBeUndefined();
  });

  it("[M13] takes one claimed year, five centuries of them, and a time without beginning", () => {
    for (const date of ["1760", "1450/1950", "../1760"])
      for (const mends of Object.values(readMends(large(6, 12, date), ASSUMED_ODDS))) {
        expectSane(mends);
        expect(Number.isFinite(mends.best?.year)).toBe(true);
      }
  });

  it("[M13] takes nothing at all", () => {
    for (const mends of Object.values(mendSketch([], {}))) expectSane(mends);
  });

  it.each([
    ["a hundred parts and five hundred observations", 100, 500, "1760/1770"],
    ["five hundred observations on one part", 1, 500, "1760/1770"],
    ["five hundred observations over five centuries", 40, 500, "1450/1950"],
  ])("[M13] ends with %s", (_, parts, observations, date) => {
    const subject = large(parts, observations, date);
    const { possible, usual } = readMends(subject, ASSUMED_ODDS);
    expectSane(possible);
    expectSane(usual);
  });

  it("[M13] ends where all of forty parts are separate from one another", () => {
    const parts = Array.from({ length: 40 }, (_, n) => `p${String(n).padStart(2, "0")}`);
    const separate = parts.flatMap((a, i) => parts.slice(i + 1).map((b) => [a, b] as const));
    const { possible } = mendSketch([], { parts, separate });
    expectSane(possible);
    // All but one of another making.
    expect(possible.best?.price).toBe(39 * 850);
  });
});
