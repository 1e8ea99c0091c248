import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import type { Check } from "#server/reasoning/check.ts";
import { placingOf } from "#server/reasoning/dates/placing.ts";
import type { ClaimSketch } from "#tests/support/build-claim.ts";
import { currencyOf, subjectOf } from "#tests/support/weigh-sketch.ts";

const { leak, lateSurvival } = ASSUMED_ODDS;
const claim = (
  id: string,
  relation: "introduced" | "common from" | "common until" | "discontinued",
  when: string,
) => ({
  ...{ id, relation, when },
  subject: "F",
});

describe("[B2] events that claims state", () => {
  it("rise from the introduction to common use, and fall from decline to end", () => {
    const found = currencyOf([
      claim("a", "introduced", "1700"),
      claim("b", "common from", "1740"),
      claim("c", "common until", "1780"),
      claim("d", "discontinued", "1820"),
    ]);
    expect(found.in(1720)).toBeCloseTo(leak + (1 - leak) * 0.5, 10);
    expect(found.in(1760)).toBe(1);
    expect(found.in(1800)).toBeCloseTo(leak + (1 - leak) * (lateSurvival + (1 - lateSurvival) * 0.5), 10);
    expect([...found.shapes]).toEqual([]);
    expect([...found.claims].sort()).toEqual(["a", "b", "c", "d"]);
  });

  it.each([
    [
      "25 years from an introduction to common use",
      claim("a", "introduced", "1700"),
      1710,
      10 / 25,
      "common",
    ],
    ["40 years before common use", claim("a", "common from", "1740"), 1710, 10 / 40, "introduced"],
    ["40 years from a decline to the end", claim("a", "common until", "1740"), 1750, 1 - 10 / 40, "gone"],
    ["25 years before the end", claim("a", "discontinued", "1740"), 1725, 1 - 10 / 25, "declining"],
  ] as const)(
    "%s are assumed where the other event is not known, and it is said so",
    (_, one, year, share, missing) => {
      const found = currencyOf([one]);
      const isEnd = missing === "gone" || missing === "declining";
      const full = isEnd ? lateSurvival + (1 - lateSurvival) * share : share;
      expect(found.in(year)).toBeCloseTo(leak + (1 - leak) * full, 10);
      expect([...found.shapes]).toEqual([["F", [missing]]]);
    },
  );

  it("say nothing where none is known: always as common", () => {
    const { byYear, shapes } = currencyOf([]);
    expect(new Set(byYear)).toEqual(new Set([1]));
    expect(shapes.size).toBe(0);
  });

  it("of sources that disagree are averaged", () => {
    const early = currencyOf([claim("a", "common from", "1720")]);
    const late = currencyOf([claim("b", "common from", "1760")]);
    const both = currencyOf([claim("a", "common from", "1720"), claim("b", "common from", "1760")]);
    for (const year of [1690, 1715, 1730, 1750, 1770])
      expect(both.in(year)).toBeCloseTo((early.in(year) + late.in(year)) / 2, 10);
  });

  it("take at least a year, whatever their order", () => {
    const found = currencyOf([claim("a", "introduced", "1740"), claim("b", "common from", "1700")]);
    expect(found.in(1739)).toBe(leak);
    expect(found.in(1741)).toBe(1);
  });

  it("leave stragglers after an end of habit, and none after a physical one", () => {
    const habit = currencyOf([claim("a", "discontinued", "1800")]);
    const physical = currencyOf([{ ...claim("a", "discontinued", "1800"), hardness: "physical" }]);
    expect(habit.in(1850)).toBeCloseTo(leak + (1 - leak) * lateSurvival, 10);
    expect(physical.in(1850)).toBe(leak);
  });

  it("that lie beyond the grid are cut to it", () => {
    const found = currencyOf([claim("a", "introduced", "1200"), claim("b", "common from", "1250")]);
    expect(found.in(1500)).toBe(leak);
    expect(found.in(1501)).toBe(1);
  });
});

describe("[B3] a thing through what it requires", () => {
  const saw = { id: "s", relation: "introduced", subject: "saw", when: "1800" } as const;
  const plane = { id: "p", relation: "introduced", subject: "plane", when: "1700" } as const;
  const needs = (ways: string[][], closed = true): ClaimSketch => ({
    ...{ id: "n", relation: "requires", subject: "F" },
    ...{ ways, closed },
  });

  it("is no more common than the one way of making it", () => {
    const tool = currencyOf([saw], { feature: "saw" });
    const found = currencyOf([saw, needs([["saw"]])]);
    for (const year of [1700, 1801, 1812, 1900]) expect(found.in(year)).toBeCloseTo(tool.in(year), 12);
    expect([...found.claims].sort()).toEqual(["n", "s"]);
    expect([...found.shapes.keys()]).toEqual(["saw"]);
  });

  it("needs all of a way, and any of several", () => {
    const of = (feature: string) => currencyOf([saw, plane], { feature }).in(1810);
    const [s, p] = [of("saw"), of("plane")];
    expect(s).toBeLessThan(p);
    expect(currencyOf([saw, plane, needs([["saw", "plane"]])]).in(1810)).toBeCloseTo(s * p, 10);
    expect(currencyOf([saw, plane, needs([["saw"], ["plane"]])]).in(1810)).toBeCloseTo(
      1 - (1 - s) * (1 - p),
      10,
    );
  });

  it("is bounded by no open list", () => {
    expect(new Set(currencyOf([saw, needs([["saw"]], false)]).byYear)).toEqual(new Set([1]));
  });

  it("has the leak alone outside its possible years: before an introduction, where it is not found, where it is confined from", () => {
    expect(currencyOf([{ id: "a", relation: "introduced", subject: "F", when: "1700" }]).in(1699)).toBe(leak);
    const missing = {
      id: "a",
      relation: "not found in",
      subject: "F",
      region: "north",
      when: "1700/1750",
    } as const;
    const there = currencyOf([missing], { region: "farm" });
    expect([there.in(1699), there.in(1720), there.in(1751)]).toEqual([1, leak, 1]);
    const confined = { id: "a", relation: "confined to", subject: "F", regions: ["south"] } as const;
    expect(new Set(currencyOf([confined], { region: "farm" }).byYear)).toEqual(new Set([leak]));
    expect(new Set(currencyOf([confined], { region: "south" }).byYear)).toEqual(new Set([1]));
  });

  it("is made after its time by a copyist, but not before it was there", () => {
    const odds = { ...ASSUMED_ODDS, copied: 0.6 };
    const found = currencyOf(
      [
        { id: "a", relation: "introduced", subject: "F", when: "1700" },
        { id: "b", relation: "discontinued", subject: "F", when: "1750" },
      ],
      { odds },
    );
    expect(found.in(1900)).toBeCloseTo(0.6 + 0.4 * (leak + (1 - leak) * lateSurvival), 10);
    expect(found.in(1690)).toBe(leak);
  });

  it("[B14] is the same in a circle, whatever was asked before", () => {
    const circle = [
      { id: "a", relation: "introduced", subject: "F", when: "1700" },
      { id: "b", relation: "introduced", subject: "G", when: "1750" },
      { id: "c", relation: "requires", subject: "F", ways: [["G"]] },
      { id: "d", relation: "requires", subject: "G", ways: [["F"]] },
    ] as const;
    const ask = (...features: readonly string[]) => {
      const observations = features.map((feature) => ({ id: feature, part: "top", feature }));
      const subject = subjectOf(circle, { observations });
      const { placedAt } = placingOf(subject, ASSUMED_ODDS);
      const currency = placedAt(subject.checks[0] as Check, 0).currency;
      return features.map((feature) => [...currency(id<"term">(feature)).byYear]);
    };
    const [f, g] = ask("F", "G");
    expect(ask("G", "F")).toEqual([g, f]);
    expect(new Set(f).size).toBeGreaterThan(2);
  });
});
