import { describe, expect, it } from "vitest";
import { makeClaim } from "#server/domain/make-claim.ts";
import type { Problem } from "#server/domain/problem.ts";
import { aClaim, type ClaimSketch } from "#tests/support/build-claim.ts";

const SOUND: readonly ClaimSketch[] = [
  { id: "c1", relation: "requires", subject: "feature.a", ways: [["tool.a", "material.a"], ["tool.b"]] },
  { id: "c2", relation: "introduced", subject: "tool.a", when: "1790/1799", region: "region.a" },
  { id: "c3", relation: "attested", subject: "tool.a", when: "1780" },
  { id: "c4", relation: "common from", subject: "tool.a", when: "180X" },
  { id: "c5", relation: "common until", subject: "tool.a", when: "1850~" },
  { id: "c6", relation: "discontinued", subject: "tool.a", when: "1900" },
  { id: "c7", relation: "current", subject: "style.a", when: "1750/1780" },
  { id: "c8", relation: "active", subject: "maker.a", when: "1750/.." },
  { id: "c9", relation: "typical of", subject: "feature.a", object: "style.a" },
  { id: "c10", relation: "confined to", subject: "feature.a", regions: ["region.a"] },
  { id: "c11", relation: "not found in", subject: "feature.a", region: "region.a" },
  { id: "c12", relation: "not found in", subject: "feature.a", form: "form.a", when: "1714/1820" },
  { id: "c13", relation: "spread to", subject: "tool.a", from: "region.a", to: "region.b", years: [10, 20] },
  { id: "c14", relation: "indicates", subject: "feature.a", states: ["later", "reworked"], cause: "reuse" },
  { id: "c15", relation: "void when", of: "c14", condition: "feature.b" },
];

/** The problems of a claim that is sound but for these fields, as code and path. */
function problemsOf(id: string, changed: object): readonly [Problem["code"], string][] {
  const sound = SOUND.find((sketch) => sketch.id === id) as ClaimSketch;
  const made = makeClaim({ ...aClaim(sound), ...changed });
  return "id" in made ? [] : made.map(({ code, path }) => [code, path.join(".")]);
}

it.each(SOUND)("[G2] a sound claim of the relation $relation is made, and is the draft itself", (sketch) => {
  const draft = aClaim(sketch);
  expect(makeClaim(draft)).toBe(draft);
});

describe("[G2][G5] citations", () => {
  const published = { basis: "published", source: "source.a", locator: "p. 12" };
  it.each([
    [[], "UNCITED_CLAIM", "citations"],
    [undefined, "UNCITED_CLAIM", "citations"],
    ["p. 12", "WRONG_FORMAT", "citations"],
    [[{ ...published, locator: "  " }], "MISSING_LOCATOR", "citations.0.locator"],
    [[{ basis: "published", source: "source.a" }], "MISSING_LOCATOR", "citations.0.locator"],
    [[published, { basis: "published", locator: "p. 1" }], "WRONG_FORMAT", "citations.1.source"],
    [[{ basis: "hearsay" }], "WRONG_FORMAT", "citations.0.basis"],
    [[{ basis: "from memory", source: "source.a" }], "WRONG_FORMAT", "citations.0.source"],
    [[{ basis: "common practice", note: 3 }], "WRONG_FORMAT", "citations.0.note"],
  ])("%j are refused", (citations, code, path) => {
    expect(problemsOf("c2", { citations })).toEqual([[code, path]]);
  });

  it("of every basis are taken", () => {
    const bases = [published, { basis: "common practice", note: "n" }, { basis: "from memory" }];
    expect(problemsOf("c2", { citations: bases })).toEqual([]);
  });
});

describe("[G7] the date is read in the role of the relation", () => {
  it.each([
    ["c2", "[1790,1799]", []],
    ["c2", "../1799", []],
    ["c7", "[1750,1780]", [["UNREADABLE_DATING", "when"]]],
    ["c12", "{1714,1820}", [["UNREADABLE_DATING", "when"]]],
    ["c2", "1790-1799", [["UNREADABLE_DATING", "when"]]],
    ["c2", undefined, [["WRONG_FORMAT", "when"]]],
    ["c2", 1790, [["WRONG_FORMAT", "when"]]],
  ])("%s with %s", (id, when, problems) => {
    expect(problemsOf(id, { when })).toEqual(problems);
  });
});

describe("[G8] hardness", () => {
  it.each([
    ["c7", "physical", 1],
    ["c4", "physical", 1],
    ["c5", "physical", 1],
    ["c8", "practice", 1],
    ["c2", "practice", 0],
    ["c6", "physical", 0],
    ["c1", "practice", 0],
    ["c2", undefined, 1],
    ["c2", "soft", 1],
  ])("of %s as %s has %i problems", (id, hardness, count) => {
    const problems = problemsOf(id, { hardness });
    expect(problems).toEqual(Array(count).fill(["WRONG_FORMAT", "hardness"]));
  });

  it.each(["c9", "c13", "c14", "c15"])("of %s is a field that the relation has not", (id) => {
    expect(problemsOf(id, { hardness: "physical" })).toEqual([["WRONG_FORMAT", "hardness"]]);
  });
});

describe("[G9][G10][G11] lists", () => {
  it.each([
    ["c1", { ways: [] }, "EMPTY_LIST", "ways"],
    ["c1", { ways: [], closed: false }, "EMPTY_LIST", "ways"],
    ["c1", { ways: [["tool.a"], []] }, "EMPTY_LIST", "ways.1"],
    ["c1", { ways: ["tool.a"] }, "WRONG_FORMAT", "ways.0"],
    ["c1", { ways: [["tool a"]] }, "WRONG_FORMAT", "ways.0"],
    ["c1", { closed: "yes" }, "WRONG_FORMAT", "closed"],
    ["c10", { regions: [] }, "EMPTY_LIST", "regions"],
    ["c10", { regions: undefined }, "WRONG_FORMAT", "regions"],
    ["c14", { states: [] }, "EMPTY_LIST", "states"],
    ["c14", { states: ["old"] }, "WRONG_FORMAT", "states"],
    ["c13", { years: [20, 10] }, "WRONG_FORMAT", "years"],
    ["c13", { years: [10] }, "WRONG_FORMAT", "years"],
    ["c13", { years: [1.5, 2] }, "WRONG_FORMAT", "years"],
    ["c13", { years: [-1, 2] }, "WRONG_FORMAT", "years"],
    ["c13", { years: [1, 2, 3] }, "WRONG_FORMAT", "years"],
  ])("of %s with %j are refused", (id, changed, code, path) => {
    expect(problemsOf(id, changed)).toEqual([[code, path]]);
  });

  it("of years may be of one length", () => {
    expect(problemsOf("c13", { years: [0, 0] })).toEqual([]);
  });
});

describe("[G6][G12] nothing is lost in silence", () => {
  it.each([
    ["c2", { scop: {} }, "scop"],
    ["c2", { scope: { regions: "region.a" } }, "scope.regions"],
    ["c2", { scope: { region: "" } }, "scope.region"],
    ["c2", { scope: undefined }, "scope"],
    ["c15", { scope: {} }, "scope"],
    ["c2", { id: "claim of a saw" }, "id"],
    ["c2", { subject: "" }, "subject"],
    ["c2", { strength: "strong" }, "strength"],
    ["c2", { status: "new" }, "status"],
    ["c2", { note: 1 }, "note"],
    ["c2", { row: ["A1"] }, "row"],
    ["c15", { anywhere: undefined }, "anywhere"],
  ])("%s with %j is refused", (id, changed, path) => {
    expect(problemsOf(id, changed)).toEqual([["WRONG_FORMAT", path]]);
  });

  it.each([undefined, null, 3, "claim", [], {}, { relation: "made of" }, { relation: "toString" }])(
    "%j is no claim",
    (draft) => {
      expect(makeClaim(draft)).toMatchObject([{ problem: true, code: "WRONG_FORMAT" }]);
    },
  );

  it("[G30] all that is wrong is said at once", () => {
    expect(problemsOf("c1", { ways: [[]], citations: [], strength: "strong" }).map(([code]) => code)).toEqual(
      ["WRONG_FORMAT", "UNCITED_CLAIM", "EMPTY_LIST"],
    );
  });
});
