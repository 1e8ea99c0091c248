import { describe, expect, it } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const SEARCH = `query ($words: String!, $kinds: [TermKind!], $first: Int! = 12) {
  search(words: $words, kinds: $kinds, first: $first) { score term { id } }
}`;
const found = (data: { search: { term: { id: string } }[] }) => data.search.map((hit) => hit.term.id);

describe("search", () => {
  it("finds terms by the beginnings of their words, of the kinds asked for, best first", async () => {
    const { ask } = await openApi([sawGraph]);
    expect(found((await ask(SEARCH, { words: "circ" })).data)[0]).toBe("tool.circular-saw");
    expect(found((await ask(SEARCH, { words: "saw", kinds: ["FEATURE"] })).data)).toEqual([
      "feature.round-saw-marks",
    ]);
    expect(found((await ask(SEARCH, { words: "arc marks" })).data)[0]).toBe("feature.round-saw-marks");
  });

  it.each(["", "   ", "?", "%_'\"", "x".repeat(100_000)])(
    "finds nothing for %j, without an error",
    async (words) => {
      const { ask } = await openApi([sawGraph]);
      const { data, errors } = await ask(SEARCH, { words });
      expect({ data, errors }).toEqual({ data: { search: [] }, errors: [] });
    },
  );

  it("reads all the terms it found with one call of the store", async () => {
    const { ask } = await openApi([sawGraph]);
    const { calls } = await ask(SEARCH, { words: "saw" });
    expect(calls).toEqual(["search", "terms"]);
  });
});

const NARROWED = `query ($words: String! = "", $part: ID, $region: ID, $from: Int, $to: Int) {
  search(words: $words, part: $part, region: $region, from: $from, to: $to, first: 20) { term { id } }
}`;

describe("a search that is narrowed", () => {
  it.each([
    [{ part: "part.drawer" }, ["feature.round-saw-marks"]],
    [{ words: "rough", part: "part.drawer" }, []],
    [{ region: "region.london", from: 1780, to: 1800 }, ["tool.circular-saw"]],
    [{ words: "saw", from: 1780, to: 1789 }, []],
    [{ words: "saw", to: 1790 }, ["tool.circular-saw"]],
    [{ words: "saw", from: 1791 }, []],
    [{ region: "region.not-there" }, []],
    [{ from: 1800, to: 1700 }, []],
  ])("[A41] by part, region and years, with words or without: %o", async (asked, wanted) => {
    const { ask } = await openApi([sawGraph]);
    const { data, errors } = await ask(NARROWED, asked);
    expect(errors).toEqual([]);
    expect(found(data)).toEqual(wanted);
  });
});
