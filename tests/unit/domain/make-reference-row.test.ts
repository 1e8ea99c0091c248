import { describe, expect, it } from "vitest";
import { checkReferenceRows } from "#server/domain/check-reference-rows.ts";
import { makeReferenceRow } from "#server/domain/make-reference-row.ts";
import type { Problem } from "#server/domain/problem.ts";
import type { ReferenceRow } from "#server/domain/reference-row.ts";
import type { Source } from "#server/domain/source.ts";
import type { Term } from "#server/domain/term.ts";

const SOUND = {
  id: "shrinkage.ash-radial",
  table: "shrinkage",
  term: "material.ash",
  quantity: "radial shrinkage",
  value: 4.9,
  unit: "%",
  strength: "certain",
  citations: [{ basis: "published", source: "source.handbook", locator: "Table 4–3" }],
  row: "H1",
};
const RANGE = { ...SOUND, value: undefined, from: 25, to: 30 };

/** The problems of a row that is sound but for these fields, as code and path. */
function problemsOf(changed: object): readonly [Problem["code"], string][] {
  const made = makeReferenceRow({ ...SOUND, ...changed });
  return "id" in made ? [] : made.map(({ code, path }) => [code, path.join(".")]);
}

describe("a row of a reference table", () => {
  it.each([
    SOUND,
    RANGE,
    { ...SOUND, value: "December", unit: undefined },
    { ...SOUND, scope: { region: "region.a" } },
  ])("is made of %j and is the draft itself", (draft) => {
    expect(makeReferenceRow(draft)).toBe(draft);
  });

  it.each([
    [{ id: "ash-radial" }, "id"],
    [{ id: "shrinkage." }, "id"],
    [{ table: "movement" }, "id"],
    [{ term: undefined }, "term"],
    [{ quantity: " " }, "quantity"],
    [{ value: undefined }, "value"],
    [{ value: "" }, "value"],
    [{ value: Number.NaN }, "value"],
    [{ value: true }, "value"],
    [{ from: 1, to: 2 }, "value"],
    [{ value: undefined, from: 2, to: 1 }, "from"],
    [{ value: undefined, from: 2 }, "from"],
    [{ unit: "" }, "unit"],
    [{ strength: "sure" }, "strength"],
    [{ scope: "region.a" }, "scope"],
    [{ scope: { region: "" } }, "scope.region"],
    [{ scope: { place: "region.a" } }, "scope.place"],
    [{ note: 3 }, "note"],
    [{ row: "" }, "row"],
    [{ amount: 3 }, "amount"],
  ])("is refused with %j", (changed, path) => {
    expect(problemsOf(changed)).toEqual([["WRONG_FORMAT", path]]);
  });

  it("is refused without a citation, and with a published one that has no place in its source", () => {
    expect(problemsOf({ citations: [] })).toEqual([["UNCITED_CLAIM", "citations"]]);
    expect(problemsOf({ citations: [{ basis: "published", source: "source.handbook" }] })).toEqual([
      ["MISSING_LOCATOR", "citations.0.locator"],
    ]);
  });

  it.each([null, "row", []])("is not made of %j", (draft) => {
    expect(makeReferenceRow(draft)).toMatchObject([{ code: "WRONG_FORMAT", path: [] }]);
  });
});

describe("rows beside the graph they speak of", () => {
  const known = {
    terms: new Map([
      ["material.ash", { id: "material.ash", kind: "material", label: "ash" } as Term],
      ["region.a", { id: "region.a", kind: "region", label: "A" } as Term],
    ]),
    sources: new Map([["source.handbook", { id: "source.handbook" } as Source]]),
  };
  const codesOf = (...rows: readonly object[]) =>
    checkReferenceRows(rows as readonly ReferenceRow[], known).map(({ code, path }) => [
      code,
      path.join("."),
    ]);

  it("are sound where everything they name is there", () => {
    expect(codesOf(SOUND, { ...SOUND, id: "shrinkage.b", scope: { region: "region.a" } })).toEqual([]);
  });

  it.each([
    [{ term: "material.elm" }, "UNKNOWN_TERM", "term"],
    [{ scope: { region: "region.b" } }, "UNKNOWN_TERM", "scope.region"],
    [{ scope: { region: "material.ash" } }, "WRONG_KIND_OF_TERM", "scope.region"],
    [
      { citations: [{ basis: "published", source: "source.other", locator: "p. 1" }] },
      "UNKNOWN_SOURCE",
      "citations.0.source",
    ],
  ])("are found out with %j", (changed, code, path) => {
    expect(codesOf({ ...SOUND, ...changed })).toEqual([[code, path]]);
  });

  it("are found out with one id for two", () => {
    expect(codesOf(SOUND, SOUND)).toEqual([["DUPLICATE_ID", ""]]);
  });
});
