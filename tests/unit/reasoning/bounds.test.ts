import { describe, expect, it } from "vitest";
import { aTree } from "#tests/support/build-neighbourhood.ts";
import { findSketch, NORTH_AND_SOUTH } from "#tests/support/examine-sketch.ts";

describe("existence", () => {
  it("[E1] nothing was made before it was introduced", () => {
    const { possible } = findSketch([{ id: "c", relation: "introduced", subject: "F", when: "1790" }]);
    expect(possible.outer).toEqual([[1790, null]]);
  });

  it("[E1] what was attested says nothing of a piece", () => {
    const found = findSketch([{ id: "c", relation: "attested", subject: "F", when: "1790" }]);
    expect(found).toMatchObject({ label: "silent", reason: "undated", setAside: [] });
  });
});

describe("the nearest scope", () => {
  const wide = { id: "wide", relation: "introduced", subject: "F", region: "world", when: "1700" } as const;
  const near = { id: "near", relation: "introduced", subject: "F", region: "north", when: "1750" } as const;

  it("[E5] a claim for the region overrides one for what surrounds it, earlier or later", () => {
    const found = findSketch([wide, near], { region: "town" });
    expect(found.possible.outer).toEqual([[1750, null]]);
    expect(found.setAside).toEqual([{ claim: "wide", reason: "overridden", by: "near" }]);
    const early = findSketch([{ ...wide, when: "1780" }, near], { region: "town" });
    expect(early.possible.outer).toEqual([[1750, null]]);
  });

  it("[E5] elsewhere the wider claim stands", () => {
    expect(findSketch([wide, near], { region: "south" }).possible.outer).toEqual([[1700, null]]);
  });

  it("[E5] claims whose scopes cannot be compared apply together", () => {
    const terms = [...NORTH_AND_SOUTH, ...aTree("form", { chest: {} })];
    const byForm = { id: "form", relation: "introduced", subject: "F", form: "chest", when: "1760" } as const;
    const found = findSketch([near, byForm], { region: "town", form: "chest" }, terms);
    expect(found.possible.outer).toEqual([[1760, null]]);
    expect(found.setAside).toEqual([]);
  });

  it("[E5] a scope narrower in one dimension and no wider in another overrides", () => {
    const terms = [...NORTH_AND_SOUTH, ...aTree("form", { chest: {} })];
    const both = { ...near, id: "both", form: "chest", when: "1760" } as const;
    const found = findSketch([near, both], { region: "town", form: "chest" }, terms);
    expect(found.setAside).toEqual([{ claim: "near", reason: "overridden", by: "both" }]);
  });

  it("[E5] relations do not override one another, nor what is hard what is soft", () => {
    const common = {
      id: "common",
      relation: "common from",
      subject: "F",
      region: "town",
      when: "1770",
    } as const;
    const soft = { ...near, id: "soft", region: "town", hardness: "practice", when: "1740" } as const;
    const found = findSketch([near, common, soft], { region: "town" });
    expect(found.possible.outer).toEqual([[1750, null]]);
    expect(found.usual.outer).toEqual([[1770, null]]);
    expect(found.setAside).toEqual([]);
  });

  it("[E5] only a closed list overrides a closed list", () => {
    const list = { relation: "requires", subject: "F" } as const;
    const dated = { id: "t", relation: "introduced", subject: "T", when: "1790" } as const;
    const closedWide = { ...list, id: "wide", ways: [["T"]] };
    const openNear = { ...list, id: "near", region: "north", ways: [["U"]], closed: false };
    const openFirst = findSketch([closedWide, openNear, dated], { region: "town" });
    expect(openFirst.possible.outer).toEqual([[1790, null]]);
    const closedFirst = findSketch([closedWide, { ...openNear, closed: true }, dated], { region: "town" });
    expect(closedFirst).toMatchObject({ label: "silent", reason: "overridden" });
  });

  it("[E5] regional claims are never overridden", () => {
    const found = findSketch(
      [
        { id: "a", relation: "not found in", subject: "F", region: "north", when: "1700/1720" },
        { id: "b", relation: "not found in", subject: "F", region: "town", when: "1740/1750" },
      ],
      { region: "town" },
    );
    expect(found.usual.outer).toEqual([
      [null, 1699],
      [1721, 1739],
      [1751, null],
    ]);
  });

  it("[E4] a claim scoped by a form or a kind of part that is not recorded does not apply", () => {
    const terms = [
      ...NORTH_AND_SOUTH,
      ...aTree("form", { chest: {} }),
      ...aTree("part", { drawer: { bottom: {} } }),
    ];
    const byForm = {
      id: "form",
      relation: "common from",
      subject: "F",
      form: "chest",
      when: "1760",
    } as const;
    const byPart = {
      id: "part",
      relation: "common until",
      subject: "F",
      part: "drawer",
      when: "1800",
    } as const;
    expect(findSketch([byForm, byPart], {}, terms)).toMatchObject({
      label: "silent",
      reason: "out-of-scope",
      setAside: [{ claim: "form" }, { claim: "part" }],
    });
    const known = findSketch(
      [byForm, byPart],
      { form: "chest", parts: [{ id: "p", kind: "bottom" }] },
      terms,
    );
    expect(known.usual.outer).toEqual([[1760, 1800]]);
  });
});

describe("hard and soft", () => {
  const claims = [
    { id: "hard", relation: "introduced", subject: "F", when: "1700" },
    { id: "soft", relation: "common from", subject: "F", when: "1790", hardness: "physical" },
  ] as const;

  it("[E7] habits never make a thing impossible, whatever hardness they are recorded with", () => {
    const found = findSketch(claims);
    expect(found.possible.outer).toEqual([[1700, null]]);
    expect(found.usual.outer).toEqual([[1790, null]]);
    expect(found).toMatchObject({
      label: "contradictory",
      hardness: "practice",
      direction: "late",
      gapYears: 15,
    });
    expect(found.support.claims).toEqual(["soft"]);
  });

  it("[E7] a soft list and the soft years of what a hard list needs count for usual years alone", () => {
    const needs = { id: "needs", relation: "requires", subject: "F", ways: [["T"]] } as const;
    const tool = { id: "tool", relation: "introduced", subject: "T", when: "1790" } as const;
    expect(findSketch([needs, tool]).hardness).toBe("physical");
    expect(findSketch([{ ...needs, hardness: "practice" }, tool]).hardness).toBe("practice");
    expect(findSketch([needs, { ...tool, relation: "common from" }]).hardness).toBe("practice");
  });
});

describe("ways of making", () => {
  const list = { id: "list", relation: "requires", subject: "F" } as const;
  const dated = (subject: string, when: string) =>
    ({ id: `of-${subject}`, relation: "active", subject, when }) as const;

  it("[E8] leave the gap between them", () => {
    const found = findSketch([
      { ...list, ways: [["A"], ["B"]] },
      dated("A", "1700/1740"),
      dated("B", "1790/1800"),
    ]);
    expect(found.possible.outer).toEqual([
      [1700, 1740],
      [1790, 1800],
    ]);
    expect(found).toMatchObject({
      label: "contradictory",
      hardness: "physical",
      direction: "gap",
      gapYears: 15,
    });
  });

  it("[E8] say nothing if one of them is undated, though the thing's own dates stay", () => {
    const claims = [{ ...list, ways: [["A"], ["B"]] }, dated("A", "1700/1740")];
    expect(findSketch(claims)).toMatchObject({ label: "silent", reasons: ["undated"] });
    const own = { id: "own", relation: "introduced", subject: "F", when: "1790" } as const;
    expect(findSketch([...claims, own]).possible.outer).toEqual([[1790, null]]);
  });

  it("[E8] need all the terms of a way at once", () => {
    const claims = [{ ...list, ways: [["A", "B"]] }, dated("A", "1700/1765"), dated("B", "1770/1800")];
    expect(findSketch(claims)).toMatchObject({ label: "contradictory", direction: "nowhere" });
  });

  it("[E9] may need one another in a circle", () => {
    const claims = [
      { id: "ab", relation: "requires", subject: "F", ways: [["A"], ["B"]] },
      { id: "a", relation: "requires", subject: "A", ways: [["F"], ["B"]] },
      { id: "b", relation: "introduced", subject: "B", when: "1790" },
      { id: "a-own", relation: "introduced", subject: "A", when: "1780" },
    ] as const;
    expect(findSketch(claims).possible.outer).toEqual([[1780, null]]);
    expect(findSketch(claims, { feature: "A" }).possible.outer).toEqual([[1780, null]]);
  });
});
