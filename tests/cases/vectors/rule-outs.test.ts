import { describe, expect, it } from "vitest";
import type { Atom } from "#server/domain/report.ts";
import { examine } from "#server/reasoning/examine.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { neighbourhoodOf } from "#tests/support/build-neighbourhood.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { CLAIMS, REGIONS } from "./vector-graph.ts";

function name(atom: Atom): string {
  switch (atom.kind) {
    case "attr":
      return `attr(${atom.of})`;
    case "original":
      return `orig(${atom.part})`;
    case "observation":
      return `obs(${atom.observation})`;
    case "claim":
      return atom.claim;
    case "rivals":
      return atom.claims.join("|");
    case "separate":
      return `separate(${atom.parts.join(",")})`;
    case "assumption":
      return atom.assumption;
  }
}

const W1 = aPiece({
  date: "1765/1775",
  region: "Boston",
  observations: [
    { id: "o1", part: "carcase", feature: "F3" },
    { id: "o2", part: "drawers", feature: "F1" },
    { id: "o3", part: "drawers", feature: "F8" },
    { id: "o4", part: "brasses", feature: "F9" },
  ],
});
const W1_CLAIMS = [
  ...CLAIMS,
  aClaim({ id: "c20", relation: "discontinued", subject: "F8", when: "1830" }),
  aClaim({ id: "c21", relation: "current", subject: "F9", when: "1780/1800" }),
];

describe("the first worked example: a chest with later drawers and brasses", () => {
  const report = examine(W1, neighbourhoodOf(REGIONS, W1_CLAIMS));
  const sets = report.ruleOuts.map(({ atoms }) => atoms.map(name));

  it("[E24][E25][E26] has the four minimal rule-outs, and no other", () => {
    // Claims scoped by a region also put the claimed region in question; that is an atom of its own.
    const withoutRegion = sets.map((atoms) => atoms.filter((atom) => atom !== "attr(region)").sort());
    expect(withoutRegion.sort()).toEqual(
      [
        ["attr(date)", "orig(drawers)", "obs(o2)", "c1", "c16"],
        ["attr(date)", "orig(brasses)", "obs(o4)", "c21"],
        ["orig(carcase)", "orig(drawers)", "obs(o1)", "obs(o2)", "c1", "c10", "c16"],
        ["orig(brasses)", "orig(drawers)", "obs(o2)", "obs(o4)", "c1", "c16", "c21"],
      ]
        .map((atoms) => atoms.sort())
        .sort(),
    );
  });

  it("[E26] tells what cannot be from what would be unusual", () => {
    expect(report.ruleOuts.map(({ hardness, against }) => `${hardness} ${against}`)).toEqual([
      "physical attribution",
      "practice attribution",
      "practice parts",
      "practice parts",
    ]);
    expect(report.ruleOuts.map(({ gapYears }) => gapYears)).toEqual([40, 5, 15, 15]);
  });

  it("[E24] puts the claimed region in question where a claim is scoped by one", () => {
    const regional = sets.filter((atoms) => atoms.includes("attr(region)"));
    expect(regional.every((atoms) => atoms.includes("c16"))).toBe(true);
    expect(regional).toHaveLength(3);
  });

  it("[E27] says that giving up c16 would bring back the claim it overrides", () => {
    expect(report.notSearched).toEqual([{ why: "claims-given-up", findings: ["o1", "o2", "o4"] }]);
    expect(report.complete).toBe(true);
  });
});

describe("the second worked example: three windows with gaps on one part", () => {
  const twice = (feature: string, first: string, second: string) => [
    aClaim({ id: `${feature}-1`, relation: "active", subject: feature, when: first }),
    aClaim({ id: `${feature}-2`, relation: "active", subject: feature, when: second }),
  ];
  const claims = [
    ...twice("Fa", "1700/1740", "1830/1860"),
    ...twice("Fb", "1700/1740", "1770/1800"),
    ...twice("Fc", "1770/1800", "1830/1860"),
  ];
  const report = examine(
    aPiece({
      date: "1700/1860",
      observations: ["Fa", "Fb", "Fc"].map((feature) => ({ id: `o${feature}`, part: "top", feature })),
    }),
    neighbourhoodOf([], claims),
  );

  it("[E27] has one rule-out of six atoms, and no other", () => {
    expect(report.ruleOuts.map(({ atoms }) => atoms.map(name))).toEqual([
      ["obs(oFa)", "obs(oFb)", "obs(oFc)", "Fa-1|Fa-2", "Fb-1|Fb-2", "Fc-1|Fc-2"],
    ]);
    expect(report.ruleOuts[0]).toMatchObject({
      ...{ hardness: "physical", against: "observation", parts: ["top"] },
      findings: ["oFa", "oFb", "oFc"],
    });
    expect(report).toMatchObject({ notSearched: [], complete: true });
    expect(report.ruleOutCount).toMatchObject({ count: 1, isLowerBound: false });
  });
});
