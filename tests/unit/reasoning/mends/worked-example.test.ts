import { describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import { readSubject } from "#server/reasoning/check.ts";
import { knowGraph } from "#server/reasoning/known-graph.ts";
import { groundOf } from "#server/reasoning/mends/ground.ts";
import type { Prices } from "#server/reasoning/mends/prices.ts";
import { mendsOf } from "#server/reasoning/mends/read-mends.ts";
import { CLAIMS, REGIONS } from "#tests/cases/vectors/vector-graph.ts";
import { slowMends } from "#tests/oracles/slow-mends.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { neighbourhoodOf } from "#tests/support/build-neighbourhood.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { groundOfInstance, type MendInstance, WITHOUT_LIMIT, wordsOf } from "#tests/support/mend-instance.ts";
import { listedTexts, mendText } from "#tests/support/mend-sketch.ts";

const LATER = { carcase: 20, drawers: 8, brasses: 2 } as Readonly<Record<string, number>>;
const REUSED = { carcase: 15, drawers: 12, brasses: 10 } as Readonly<Record<string, number>>;
const CLAIM = { c1: 30, c16: 11, c20: 12, c10: 12, c21: 11 } as Readonly<Record<string, number>>;
/** The prices of the worked example, in place of those of the odds. */
const PRICES: Prices = {
  later: ([part]) => LATER[part as string],
  reused: ([part]) => REUSED[part as string],
  altered: (observation) => (observation === "o4" ? 99 : 14),
  misread: () => 13,
  claim: (claim) => CLAIM[claim] ?? 40,
  assumption: 5,
  separate: 13,
};

const CHEST = aPiece({
  date: "1765/1775",
  region: "Boston",
  observations: [
    { id: "o1", part: "carcase", feature: "F3" },
    { id: "o2", part: "drawers", feature: "F1" },
    { id: "o3", part: "drawers", feature: "F8" },
    { id: "o4", part: "brasses", feature: "F9" },
  ],
});
const OWN = [
  aClaim({ id: "c20", relation: "discontinued", subject: "F8", when: "1830" }),
  aClaim({ id: "c21", relation: "current", subject: "F9", when: "1780/1800" }),
];

function mendsWith(claims: typeof CLAIMS) {
  const graph = knowGraph(neighbourhoodOf(REGIONS, [...claims, ...OWN]), ASSUMED);
  const subject = readSubject(CHEST, graph, ASSUMED);
  return mendsOf(groundOf(subject, "practice", PRICES), "practice", subject, WITHOUT_LIMIT);
}

describe("the first worked example: a chest with later drawers and brasses", () => {
  const mends = mendsWith(CLAIMS.filter(({ id }) => !["c2", "c3"].includes(id)));

  it("[M1][M12] has exactly twenty mends, in this order", () => {
    expect(listedTexts(mends).slice(0, 5)).toEqual([
      "10 later(brasses) + later(drawers)",
      "13 c16 + later(brasses)",
      "15 later(brasses) + misread(o2)",
      "16 altered(o2) + later(brasses)",
      "19 c21 + later(drawers)",
    ]);
    const prices = [10, 13, 15, 16, 19, 21, 22, 24, 24, 25, 26, 27, 32, 41, 43, 107, 110, 112, 113, 129];
    expect(mends.listed.map(({ price }) => price)).toEqual(prices);
    expect(mends.more).toBe(false);
    expect(mends.proved).toBe(true);
  });

  it("[M10] has five ways for the drawers and four for the brasses", () => {
    expect(
      mends.perPart.map(({ parts, options }) => [
        parts.join(),
        options.map((option) => `${option.price} ${wordsOf(option.givenUp)}`),
      ]),
    ).toEqual([
      ["brasses", ["2 later(brasses)", "11 c21", "13 misread(o4)", "99 altered(o4)"]],
      ["drawers", ["8 later(drawers)", "11 c16", "13 misread(o2)", "14 altered(o2)", "30 c1"]],
    ]);
  });

  it("[M11] needs the drawers alone to be later if it may be of 1780 to 1800", () => {
    expect(mendText(mends.movedDate?.mend)).toBe("8 later(drawers)");
    expect(mends.movedDate?.years).toEqual([[1780, 1800]]);
    expect(mends.movedDate?.mend.year).toBe(1780);
  });
});

describe("the same chest where giving up a claim brings back what it overrides", () => {
  const mends = mendsWith(CLAIMS);
  const texts = listedTexts(mends);

  it("[M8] shows no mend that gives up c16 alone, as c3 and then c2 come back", () => {
    const withC16 = texts.filter((text) => /\bc16\b/.test(text));
    expect(withC16.length).toBeGreaterThan(0);
    expect(withC16.filter((text) => !/\bc3\b/.test(text))).toEqual([]);
    expect(withC16.filter((text) => !/\bc2\b|earliestAnywhere/.test(text))).toEqual([]);
    expect(texts).toContain("58 c16 + c3 + earliestAnywhere(T1) + later(brasses)");
  });

  it("[M8] keeps the sixteen mends that bring nothing back", () => {
    expect(texts.filter((text) => !/\bc16\b/.test(text))).toHaveLength(16);
    expect(texts[0]).toBe("10 later(brasses) + later(drawers)");
  });
});

describe("the second worked example: three windows with gaps on one part", () => {
  const price = { altered: 14, misread: 13 };
  const instance: MendInstance = {
    ...{ claimed: [1700, 1860], examined: 1900, separate: [], notSeparate: 1 },
    parts: { top: { later: 8, reused: 12 } },
    observations: {
      oa: { part: "top", ...price },
      ob: { part: "top", ...price },
      oc: { part: "top", ...price },
    },
    windows: [
      {
        observation: "oa",
        years: [
          [1700, 1740],
          [1830, 1860],
        ],
        claims: ["ca"],
      },
      {
        observation: "ob",
        years: [
          [1700, 1740],
          [1770, 1800],
        ],
        claims: ["cb"],
      },
      {
        observation: "oc",
        years: [
          [1770, 1800],
          [1830, 1860],
        ],
        claims: ["cc"],
      },
    ],
    claims: { ca: 30, cb: 11, cc: 12 },
  };

  it("[M3][M4] asks for one of the three, as trying every set does; the second has no year after the other two", () => {
    const { ground, scene } = groundOfInstance(instance);
    const mends = mendsOf(ground, "physical", scene, WITHOUT_LIMIT);
    expect(listedTexts(mends)).toEqual([
      "11 cb",
      "12 cc",
      "13 misread(oa)",
      "13 misread(ob)",
      "13 misread(oc)",
      "14 altered(oa)",
      "14 altered(oc)",
      "30 ca",
    ]);
    expect(new Map(mends.listed.map((mend) => [wordsOf(mend.givenUp), mend.price]))).toEqual(
      slowMends(instance),
    );
  });
});
