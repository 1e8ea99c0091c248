import { describe, expect, it } from "vitest";
import { aTerm } from "#tests/support/build-neighbourhood.ts";
import type { ObservationSketch } from "#tests/support/build-piece.ts";
import { examineSketch, findSketch } from "#tests/support/examine-sketch.ts";

const late = { id: "late", relation: "introduced", subject: "F", when: "1790" } as const;
const unless = { id: "unless", relation: "void when", of: "late", condition: "gilded" } as const;
const claims = [late, unless];
const tree = [
  { id: "seat", within: "frame" },
  { id: "frame" },
  { id: "rail", within: "frame" },
  { id: "block", within: "seat" },
  { id: "back" },
];
const parts = tree.map((part) => ({ ...part }));
const gilding = (part: string, more: Partial<ObservationSketch> = {}): ObservationSketch => ({
  ...{ id: "gilding", part, feature: "gilded" },
  ...more,
});
const onSeat = (...observations: ObservationSketch[]) => findSketch(claims, { parts, observations });

describe("an exception", () => {
  it.each(["seat", "frame", "block"])(
    "[E13] holds when its condition is seen on the part, above or below it: %s",
    (part) => {
      expect(onSeat(gilding(part))).toMatchObject({
        ...{ label: "silent", reason: "defeated" },
        setAside: [{ claim: "late", reason: "defeated", by: "unless", observation: "gilding" }],
      });
    },
  );

  it.each(["rail", "back"])("[E13] does not hold for what is seen on another part: %s", (part) => {
    expect(onSeat(gilding(part)).label).toBe("contradictory");
  });

  it("[E13] holds for what is seen on a part together with it", () => {
    const found = findSketch(claims, {
      ...{ parts, observations: [gilding("back")] },
      together: [
        ["rail", "back"],
        ["seat", "rail"],
      ],
    });
    expect(found.label).toBe("silent");
  });

  it("[E13] holds for anything on the piece if it says so", () => {
    const anywhere = [late, { ...unless, anywhere: true }];
    expect(findSketch(anywhere, { parts, observations: [gilding("back")] }).label).toBe("silent");
  });

  it("[E13] holds on any part for what is claimed of the whole", () => {
    const style = { ...late, subject: "S" } as const;
    const report = examineSketch([style, unless], { style: "S", observations: [gilding("back")] });
    expect(report.findings.find(({ id }) => id === "attr.style")).toMatchObject({ reason: "defeated" });
  });

  it("[E13] is met by a narrower term, not by a broader one", () => {
    const terms = [
      aTerm("water-gilded", "feature", "gilded"),
      aTerm("gilded", "feature", "coated"),
      aTerm("coated"),
    ];
    const seen = (feature: string) =>
      findSketch(claims, { observations: [{ id: "g", part: "top", feature }] }, terms).label;
    expect(seen("water-gilded")).toBe("silent");
    expect(seen("coated")).toBe("contradictory");
  });

  it("[E13] holds if its condition is probably there, not if it is merely possible", () => {
    expect(onSeat(gilding("seat", { sureness: "probable" })).label).toBe("silent");
    expect(onSeat(gilding("seat", { sureness: "possible" }))).toMatchObject({
      label: "contradictory",
      voidIf: [{ claim: "late", exception: "unless", condition: "gilded", standing: "merely-possible" }],
    });
  });

  it("[E13] is something to look for while nobody has, and nothing once it was looked for", () => {
    expect(onSeat().voidIf).toMatchObject([{ standing: "not-looked-for" }]);
    expect(onSeat(gilding("back")).voidIf).toMatchObject([{ standing: "not-looked-for" }]);
    expect(onSeat(gilding("seat", { seen: "unseen" })).voidIf).toMatchObject([
      { standing: "could-not-be-seen" },
    ]);
    expect(onSeat(gilding("seat", { seen: "absent" })).voidIf).toEqual([]);
  });

  it("[E13] voids a claim further down the chain", () => {
    const needs = { id: "needs", relation: "requires", subject: "G", ways: [["F"]] } as const;
    const found = findSketch([...claims, needs], { feature: "G", observations: [gilding("top")] });
    expect(found).toMatchObject({ label: "silent", reason: "defeated" });
  });

  it("[E13] that is void itself does not hold, and is nothing to look for", () => {
    const butNot = { id: "but", relation: "void when", of: "unless", condition: "regilded" } as const;
    const regilded = { id: "re", part: "top", feature: "regilded" };
    const found = findSketch([...claims, butNot], { observations: [gilding("top"), regilded] });
    expect(found).toMatchObject({ label: "contradictory", voidIf: [] });
    expect(findSketch([...claims, butNot], { observations: [regilded] }).voidIf).toEqual([]);
  });

  it("[E13] that excuses an absence alone voids no date", () => {
    const absenceOnly = { ...unless, absenceOnly: true };
    expect(findSketch([late, absenceOnly], { observations: [gilding("top")] })).toMatchObject({
      ...{ label: "contradictory", voidIf: [] },
    });
  });

  it("[E13] lets an overridden claim stand again where it voids the nearer one", () => {
    const near = { ...late, id: "near", region: "north", when: "1800" } as const;
    const nearUnless = { ...unless, of: "near" } as const;
    const found = findSketch([{ ...late, when: "1700" }, near, nearUnless], {
      region: "town",
      observations: [gilding("top")],
    });
    expect(found.possible.outer).toEqual([[1700, null]]);
  });

  it("[E13] is looked for on each part by itself, though two parts are of one kind", () => {
    const { findings } = examineSketch(claims, {
      parts: [
        { id: "upper", kind: "drawer" },
        { id: "lower", kind: "drawer" },
      ],
      observations: [
        { id: "on-upper", part: "upper", feature: "F" },
        { id: "on-lower", part: "lower", feature: "F" },
        { id: "looked", part: "lower", feature: "gilded", seen: "absent" },
      ],
    });
    const voidIf = (observation: string) => findings.find(({ id }) => id === observation)?.voidIf;
    expect(voidIf("on-upper")).toMatchObject([{ exception: "unless", standing: "not-looked-for" }]);
    expect(voidIf("on-lower")).toEqual([]);
  });

  it("[E13] is still to be looked for where only something narrower was looked for", () => {
    const tree = [aTerm("gilded"), aTerm("water-gilded", "feature", "gilded"), aTerm("coated"), aTerm("F")];
    const absent = (feature: string) =>
      findSketch(claims, { observations: [{ id: "n", part: "top", feature, seen: "absent" }] }, tree).voidIf;
    expect(absent("water-gilded")).toMatchObject([{ standing: "not-looked-for" }]);
    expect(absent("gilded")).toEqual([]);
  });
});
