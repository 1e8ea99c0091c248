import { describe, expect, it } from "vitest";
import { checkPiece } from "#server/domain/check-piece.ts";
import type { Piece } from "#server/domain/examination.ts";
import { aTerm } from "#tests/support/build-neighbourhood.ts";
import { aPiece, type PieceSketch } from "#tests/support/build-piece.ts";

const terms = [
  { ...aTerm("feature.circular-saw-mark"), label: "curved saw marks" },
  aTerm("material.tulip-poplar", "material"),
  aTerm("tool.circular-saw", "tool"),
  aTerm("region.england", "region"),
  aTerm("form.chest", "form"),
  aTerm("style.rococo", "style"),
  aTerm("maker.a", "maker"),
  aTerm("part.drawer", "part"),
];
const findTerm = (id: string) => terms.find((term) => term.id === id);
const sound: PieceSketch = {
  ...{ date: "1760~", region: "region.england", form: "form.chest", style: "style.rococo", maker: "maker.a" },
  parts: [
    { id: "case", region: "region.england" },
    { id: "drawer", kind: "part.drawer", within: "case" },
    { id: "lining", within: "drawer" },
    "foot",
  ],
  observations: [
    { id: "o1", part: "drawer", feature: "feature.circular-saw-mark" },
    { id: "o2", part: "lining", feature: "material.tulip-poplar" },
  ],
  together: [["case", "drawer"]],
  separate: [["case", "foot"]],
};

const problemsOf = (changed: PieceSketch, more: Partial<Piece> = {}): readonly [string, string][] =>
  checkPiece({ ...aPiece({ ...sound, ...changed }), ...more }, findTerm).map(({ code, path }) => [
    code,
    path.join("."),
  ]);

it("[G30] a sound piece has no problems", () => {
  expect(problemsOf({})).toEqual([]);
});

describe("[G25] the years", () => {
  it.each<[PieceSketch, readonly [string, string][]]>([
    [{ date: "c.1760" }, [["UNREADABLE_DATING", "attribution.date"]]],
    [{ date: "" }, [["UNREADABLE_DATING", "attribution.date"]]],
    [{ date: "1990/2030", examined: 1989 }, [["WRONG_FORMAT", "examined"]]],
    [{ date: "1990/2030", examined: 1990 }, []],
    [{ date: "1990~", examined: 1985 }, []],
    [{ date: "1990~", examined: 1984 }, [["WRONG_FORMAT", "examined"]]],
    [{ date: "[..1760]", examined: 1700 }, []],
    [{ examined: 2026.5 }, [["WRONG_FORMAT", "examined"]]],
    [{ examined: 0 }, [["WRONG_FORMAT", "examined"]]],
    [{ examined: Number.NaN }, [["WRONG_FORMAT", "examined"]]],
  ])("%j", (changed, problems) => {
    expect(problemsOf(changed)).toEqual(problems);
  });

  it("an unreadable date brings its offer along", () => {
    const [refused] = checkPiece(aPiece({ ...sound, date: "c.1760" }), findTerm);
    expect(refused?.instead).toBe("1760~");
  });
});

describe("[G26] the terms", () => {
  it.each<[PieceSketch, string, string]>([
    [{ region: "region.x" }, "UNKNOWN_TERM", "attribution.region"],
    [{ region: "form.chest" }, "WRONG_KIND_OF_TERM", "attribution.region"],
    [{ form: "part.drawer" }, "WRONG_KIND_OF_TERM", "attribution.form"],
    [{ style: "maker.a" }, "WRONG_KIND_OF_TERM", "attribution.style"],
    [{ maker: "style.rococo" }, "WRONG_KIND_OF_TERM", "attribution.maker"],
    [
      { observations: [{ id: "o1", part: "foot", feature: "feature.x" }] },
      "UNKNOWN_TERM",
      "observations.0.feature",
    ],
    [
      { observations: [{ id: "o1", part: "foot", feature: "tool.circular-saw" }] },
      "WRONG_KIND_OF_TERM",
      "observations.0.feature",
    ],
  ])("%j", (changed, code, path) => {
    expect(problemsOf(changed)).toEqual([[code, path]]);
  });

  it("of parts", () => {
    const parts = [
      { id: "case", kind: "form.chest" },
      { id: "drawer", region: "region.x", within: "case" },
      { id: "lining" },
      { id: "foot" },
    ];
    expect(problemsOf({ parts })).toEqual([
      ["WRONG_KIND_OF_TERM", "parts.0.kind"],
      ["UNKNOWN_TERM", "parts.1.region"],
    ]);
  });

  it("an unknown one is answered with the nearest in spelling of the right kind, if there is one", () => {
    const ask = (feature: string) =>
      checkPiece(aPiece({ observations: [{ id: "o1", part: "p", feature }] }), findTerm, terms)[0];
    expect(ask("feature.circular-saw-marks")?.instead).toBe("feature.circular-saw-mark");
    expect(ask("feature.circlar-saw-mark")?.message).toContain(
      "did you mean curved saw marks (feature.circular-saw-mark)?",
    );
    expect(ask("curved-saw-mark")?.instead).toBe("feature.circular-saw-mark");
    expect(ask("tool.circular-sow")).not.toHaveProperty("instead");
    expect(ask("feature.gilding")).not.toHaveProperty("instead");
  });
});

describe("[G27] the parts", () => {
  const withParts = (parts: PieceSketch["parts"]) =>
    problemsOf({ parts: parts ?? [], observations: [], together: [], separate: [] });

  it.each<[PieceSketch["parts"], readonly [string, string][]]>([
    [["a", "a"], [["DUPLICATE_ID", "parts.1.id"]]],
    [[{ id: "a", within: "a" }], [["PART_OF_ITSELF", "parts.0.within"]]],
    [[{ id: "a", within: "b" }], [["UNKNOWN_PART", "parts.0.within"]]],
    [
      [
        { id: "a", within: "b" },
        { id: "b", within: "c" },
        { id: "c", within: "a" },
        { id: "d", within: "a" },
      ],
      [
        ["PART_OF_ITSELF", "parts.0.within"],
        ["PART_OF_ITSELF", "parts.1.within"],
        ["PART_OF_ITSELF", "parts.2.within"],
      ],
    ],
    [[{ id: "a", within: "b" }, { id: "b", within: "c" }, "c"], []],
  ])("%j", (parts, problems) => {
    expect(withParts(parts)).toEqual(problems);
  });

  it("within themselves are told by which way", () => {
    const piece = aPiece({
      parts: [
        { id: "a", within: "b" },
        { id: "b", within: "a" },
      ],
    });
    expect(checkPiece(piece, findTerm)[0]?.message).toContain(
      "The part “a” is within itself, by way of “b”;",
    );
  });
});

it("[G28] observations have their own ids and a part that is there", () => {
  const feature = "feature.circular-saw-mark";
  const piece = aPiece({
    observations: [
      { id: "o1", part: "p", feature },
      { id: "o1", part: "q", feature },
    ],
  });
  const without = { ...piece, parts: piece.parts.slice(0, 1) };
  expect(checkPiece(without, findTerm).map(({ code, path }) => [code, path.join(".")])).toEqual([
    ["DUPLICATE_ID", "observations.1.id"],
    ["UNKNOWN_PART", "observations.1.part"],
  ]);
});

describe("[G29] the groups", () => {
  const groups = (
    together: readonly (readonly string[])[],
    separate: readonly (readonly [string, string])[],
  ) => problemsOf({ parts: ["a", "b", "c", "d", "e"], observations: [], together, separate });

  it.each<
    [readonly (readonly string[])[], readonly (readonly [string, string])[], readonly [string, string][]]
  >([
    [
      [
        ["a", "b"],
        ["c", "d"],
      ],
      [["a", "c"]],
      [],
    ],
    [[["a", "b"]], [["b", "a"]], [["TOGETHER_AND_SEPARATE", "separate.0"]]],
    [
      [
        ["a", "b"],
        ["b", "c"],
      ],
      [["a", "c"]],
      [["TOGETHER_AND_SEPARATE", "separate.0"]],
    ],
    [
      [
        ["a", "b"],
        ["c", "d"],
        ["b", "c"],
      ],
      [
        ["a", "e"],
        ["d", "a"],
      ],
      [["TOGETHER_AND_SEPARATE", "separate.1"]],
    ],
    [[], [["a", "a"]], [["TOGETHER_AND_SEPARATE", "separate.0"]]],
    [[["a"]], [], [["EMPTY_LIST", "together.0"]]],
    [[[]], [], [["EMPTY_LIST", "together.0"]]],
    [[["a", "a"]], [], [["EMPTY_LIST", "together.0"]]],
    [
      [["a", "x"]],
      [["b", "y"]],
      [
        ["UNKNOWN_PART", "together.0.1"],
        ["UNKNOWN_PART", "separate.0.1"],
      ],
    ],
  ])("%j together, %j separate", (together, separate, problems) => {
    expect(groups(together, separate)).toEqual(problems);
  });
});

it("[G30] all problems come at once, in the order of the fields", () => {
  const changed: PieceSketch = { date: "1760-80", region: "region.x", together: [["case"]] };
  expect(problemsOf(changed).map(([code]) => code)).toEqual([
    "UNREADABLE_DATING",
    "UNKNOWN_TERM",
    "EMPTY_LIST",
  ]);
});
