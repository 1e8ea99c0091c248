import { describe, expect, it } from "vitest";
import { examineSketch, findSketch } from "#tests/support/examine-sketch.ts";

const early = { id: "early", relation: "introduced", subject: "F", when: "1760" } as const;
const late = { id: "late", relation: "introduced", subject: "F", when: "1790" } as const;

describe("rivals", () => {
  it("[E6] are alternatives: outer is what either allows, inner what both do", () => {
    const { possible } = findSketch([early, late]);
    expect(possible).toEqual({ outer: [[1760, null]], inner: [[1790, null]] });
  });

  it("[E6] that alone keep a finding open are named", () => {
    const found = findSketch([early, late]);
    expect(found).toMatchObject({ label: "consistent", certain: false, openOnlyBy: ["early"] });
    expect(findSketch([early, { ...late, when: "1770" }]).openOnlyBy).toEqual([]);
  });

  it("[E6] keep a finding open through a chain", () => {
    const needs = { id: "needs", relation: "requires", subject: "G", ways: [["F"]] } as const;
    expect(findSketch([needs, early, late], { feature: "G" }).openOnlyBy).toEqual(["early"]);
  });

  it("[E6] that agree are two supports, and each rules out by itself", () => {
    const claims = [late, { ...late, id: "too" }];
    expect(findSketch(claims).support.claims).toEqual(["late"]);
    const { ruleOuts } = examineSketch(claims, { observations: [{ id: "o", part: "p", feature: "F" }] });
    expect(ruleOuts.map(({ atoms }) => atoms.filter(({ kind }) => kind === "claim"))).toEqual([
      [{ kind: "claim", claim: "late" }],
      [{ kind: "claim", claim: "too" }],
    ]);
  });

  it("[E6] are one atom of a rule-out together", () => {
    const claims = [late, { ...late, id: "later", when: "1800" }];
    const { ruleOuts } = examineSketch(claims, { observations: [{ id: "o", part: "p", feature: "F" }] });
    expect(ruleOuts).toHaveLength(1);
    expect(ruleOuts[0]?.atoms).toContainEqual({ kind: "rivals", claims: ["late", "later"] });
  });

  it("[E6] are claims of one scope, not of two", () => {
    const found = findSketch([early, { ...late, region: "north" }], { region: "town" });
    expect(found).toMatchObject({
      label: "contradictory",
      setAside: [{ claim: "early", reason: "overridden" }],
    });
  });

  it("[E6] are claims of one hardness, so that a habit disputes no fact", () => {
    const found = findSketch([late, { ...early, hardness: "practice" }]);
    expect(found.possible.outer).toEqual([[1790, null]]);
  });

  it("[E6] state the same end: a begin and an end stated apart apply together", () => {
    const found = findSketch([
      { id: "begin", relation: "current", subject: "F", when: "1750/.." },
      { id: "end", relation: "current", subject: "F", when: "../1770" },
    ]);
    expect(found.usual).toEqual({ outer: [[1750, 1770]], inner: [[1750, 1770]] });
    expect(found.support.claims).toEqual(["begin", "end"]);
  });

  it("[E6] of both ends keep the gap between what they allow", () => {
    const found = findSketch([
      { id: "a", relation: "current", subject: "F", when: "1700/1740" },
      { id: "b", relation: "current", subject: "F", when: "1780/1800" },
    ]);
    expect(found.usual).toEqual({
      outer: [
        [1700, 1740],
        [1780, 1800],
      ],
      inner: [],
    });
  });

  it("[E6] dispute one end of a span without unsettling the other", () => {
    const span = { id: "span", relation: "active", subject: "F", when: "1770/1790" } as const;
    const begin = { id: "begin", relation: "active", subject: "F", when: "1765/.." } as const;
    const found = findSketch([span, begin], { date: "1766" });
    expect(found.possible.outer).toEqual([[1765, 1790]]);
    expect(found).toMatchObject({ label: "consistent", openOnlyBy: ["begin"] });
    const agreeing = findSketch([span, { ...begin, when: "1770/.." }], { date: "1766" });
    expect(agreeing).toMatchObject({ label: "contradictory", hardness: "physical" });
  });
});
