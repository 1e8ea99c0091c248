import { describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import type { OriginCount, Origins } from "#server/domain/weighing/origins.ts";
import { readSubject } from "#server/reasoning/check.ts";
import { knowGraph } from "#server/reasoning/known-graph.ts";
import { readOrigins } from "#server/reasoning/origins/read-origins.ts";
import { aClaim, type ClaimSketch } from "#tests/support/build-claim.ts";
import { neighbourhoodOf } from "#tests/support/build-neighbourhood.ts";
import { aPiece, type PieceSketch } from "#tests/support/build-piece.ts";
import { NORTH_AND_SOUTH } from "#tests/support/examine-sketch.ts";

function originsOf(claims: readonly ClaimSketch[], piece: PieceSketch): Origins {
  const graph = knowGraph(neighbourhoodOf(NORTH_AND_SOUTH, claims.map(aClaim)), ASSUMED);
  return readOrigins(readSubject(aPiece(piece), graph, ASSUMED));
}
const made = (feature: string, ...when: string[]): ClaimSketch[] =>
  when.map((years, i) => ({ id: `${feature}-${i}`, relation: "active", subject: feature, when: years }));
/** Each part with a feature of its own, named after it. */
const withFeatures = (...parts: string[]) =>
  parts.map((part) => ({ id: `o-${part}`, part, feature: `F-${part}` }));
const pairs = (found: OriginCount["alwaysApart"]): string[] => found.map((pair) => pair.join("|"));

const SPANS = {
  carcase: "1700/1800",
  drawers: "1815/1830",
  top: "1750/1820",
  feet: "1690/1740",
  brasses: "1780/1800",
  back: "1720/1760",
};
const PARTS = Object.keys(SPANS);
const CLAIMS = Object.entries(SPANS).flatMap(([part, when]) => made(`F-${part}`, when));
const chest = (more: PieceSketch = {}): OriginCount =>
  originsOf(CLAIMS, { observations: withFeatures(...PARTS), ...more }).possible;

describe("the worked example: a chest of six parts", () => {
  it("[O1][O3][O4][O5] is of at least three pieces, and says which parts show it", () => {
    const found = chest();
    expect(found.atLeast).toBe(3);
    expect(found.witnesses).toContainEqual(["brasses", "drawers", "feet"]);
    expect(found.witnesses).toEqual([
      ["back", "brasses", "drawers"],
      ["brasses", "drawers", "feet"],
    ]);
    expect(pairs(found.alwaysTogether)).toEqual(["back|feet"]);
    expect(pairs(found.alwaysApart)).toEqual([
      "back|brasses",
      "back|drawers",
      "back|top",
      "brasses|drawers",
      "brasses|feet",
      "carcase|drawers",
      "drawers|feet",
      "feet|top",
    ]);
    expect(found).toMatchObject({ impossible: [], cut: false });
  });

  it("[O2] is of three with top and brasses of another piece than the carcase", () => {
    const found = chest({
      separate: [
        ["carcase", "top"],
        ["carcase", "brasses"],
      ],
    });
    expect(found.atLeast).toBe(3);
    expect(found.witnesses).toContainEqual(["brasses", "carcase", "drawers"]);
  });

  it("[O6] names feet and drawers that are said to be together and cannot be", () => {
    const found = chest({ together: [["feet", "drawers"]] });
    expect(found.impossible).toEqual([["drawers", "feet"]]);
    expect(found.groups.flat().sort()).toEqual(["back", "brasses", "carcase", "top"]);
  });

  it("[O3] is divided into as many groups as it needs, each of parts that have a year in common", () => {
    const { groups, atLeast } = chest();
    expect(groups).toHaveLength(atLeast);
    expect(groups.flat().sort()).toEqual([...PARTS].sort());
    for (const group of groups) {
      const spans = group.map((part) => SPANS[part as keyof typeof SPANS].split("/").map(Number));
      expect(Math.max(...spans.map(([from]) => from ?? 0))).toBeLessThanOrEqual(
        Math.min(...spans.map(([, to]) => to ?? 0)),
      );
    }
  });

  it("[O7] is told the same whatever the order of its parts", () => {
    expect(
      chest({ parts: [...PARTS].reverse(), observations: withFeatures(...[...PARTS].reverse()) }),
    ).toEqual(chest());
  });
});

describe("what pairs do not show", () => {
  it("[O3] three windows with gaps share a year in pairs, and none together", () => {
    const { possible } = originsOf(
      [
        ...made("F-a", "1700/1740", "1830/1860"),
        ...made("F-b", "1700/1740", "1770/1800"),
        ...made("F-c", "1770/1800", "1830/1860"),
      ],
      { date: "1700/1860", observations: withFeatures("a", "b", "c") },
    );
    expect(possible.atLeast).toBe(2);
    expect(possible.witnesses).toEqual([]);
    expect([possible.alwaysTogether, possible.alwaysApart]).toEqual([[], []]);
  });

  it("[O1] parts of one time and two regions are of two pieces, and a third goes with either", () => {
    const confined = (feature: string, ...regions: string[]): ClaimSketch => ({
      ...{ id: `${feature}-in`, relation: "confined to", subject: feature, regions, hardness: "physical" },
    });
    const claims = [confined("F-a", "town"), confined("F-b", "south"), confined("F-c", "town", "south")];
    const { possible } = originsOf(claims, { region: "town", observations: withFeatures("a", "b", "c") });
    expect(possible.atLeast).toBe(2);
    expect(possible.witnesses).toEqual([["a", "b"]]);
    expect(pairs(possible.alwaysApart)).toEqual(["a|b"]);
    expect(possible.alwaysTogether).toEqual([]);
  });
});

describe("what counts for origins", () => {
  const since = (region: string, when: string): ClaimSketch => ({
    ...{ id: `since-${region}`, relation: "introduced", subject: "F-a", region, when },
  });

  it("[O1] is what can be anywhere, not only where the piece is said to be from", () => {
    const claims = [since("town", "1815"), since("world", "1700"), ...made("F-b", "1700/1750")];
    const { possible } = originsOf(claims, { region: "town", observations: withFeatures("a", "b") });
    expect(possible.atLeast).toBe(1);
    expect(possible).toMatchObject({ witnesses: [], alwaysTogether: [], alwaysApart: [] });
  });

  it("[O1] is not that nobody had it earlier; but it is said if that would make more of them", () => {
    const claims = [since("town", "1815"), ...made("F-b", "1700/1750")];
    const found = originsOf(claims, { observations: withFeatures("a", "b") });
    expect([found.possible.atLeast, found.moreByFallback]).toEqual([1, true]);
    const early = originsOf([since("town", "1715"), ...made("F-b", "1700/1750")], {
      observations: withFeatures("a", "b"),
    });
    expect([early.possible.atLeast, early.moreByFallback]).toEqual([1, false]);
  });

  it("[O1] are habits only where it says so", () => {
    const habit: ClaimSketch = { id: "habit", relation: "current", subject: "F-a", when: "1800/1830" };
    const found = originsOf([habit, ...made("F-b", "1700/1750")], { observations: withFeatures("a", "b") });
    expect([found.possible.atLeast, found.usual.atLeast]).toEqual([1, 2]);
    expect(found.usual.witnesses).toEqual([["a", "b"]]);
  });

  it("[O1] are the regions that parts are known to be from, though no claim names them", () => {
    const found = originsOf([], {
      parts: [
        { id: "a", region: "town" },
        { id: "b", region: "south" },
        { id: "c", region: "north" },
      ],
    });
    expect(found.possible.atLeast).toBe(2);
    expect(found.possible.witnesses).toEqual([
      ["a", "b"],
      ["b", "c"],
    ]);
    expect(pairs(found.possible.alwaysTogether)).toEqual(["a|c"]);
  });

  it("[O2] are parts together as one, and of those the first stands for all", () => {
    const found = chest({ together: [["feet", "back"]], separate: [["top", "brasses"]] });
    expect(found.atLeast).toBe(3);
    expect(pairs(found.alwaysTogether)).toEqual(["drawers|top"]);
    expect(found.witnesses).toContainEqual(["back", "brasses", "drawers"]);
    expect(found.witnesses.flat()).not.toContain("feet");
  });

  it("[O6] is nothing that no year allows: such a part is named and not counted", () => {
    const claims = [
      ...CLAIMS,
      { id: "later", relation: "introduced", subject: "F-back", when: "1790" } as const,
    ];
    const found = originsOf(claims, { observations: withFeatures(...PARTS) }).possible;
    expect(found.impossible).toEqual([["back"]]);
    expect(found.atLeast).toBe(3);
  });

  it("[O3] is at least one piece where there are parts, and none where there are none", () => {
    expect(originsOf([], { parts: ["a", "b"] }).possible).toMatchObject({ atLeast: 1, groups: [["a", "b"]] });
    expect(originsOf([], {}).possible).toMatchObject({ atLeast: 0, groups: [] });
  });
});
