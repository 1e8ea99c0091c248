import { describe, expect, it } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

describe("sources", () => {
  it("[A2] a source shows its line of text, its item and the claims that cite it", async () => {
    const { ask } = await openApi([sawGraph]);
    const { data, errors } = await ask(`{
      source(id: "source.saw-book") {
        id kind text title author year url reading note csl claims { edges { node { id } } }
      }
      sources { totalCount edges { node { id } } }
    }`);
    expect(errors).toEqual([]);
    const { csl, text, ...source } = data.source;
    expect(source).toEqual({
      id: "source.saw-book",
      kind: "book",
      title: "Saws and their marks",
      author: "Example, Ann",
      year: "1999",
      url: "https://example.org/saws",
      reading: "read",
      note: null,
      claims: { edges: [{ node: { id: "claim.saw" } }] },
    });
    expect(text).toContain("1999");
    expect(JSON.parse(csl)).toMatchObject({ type: "book", title: "Saws and their marks" });
    expect(data.sources).toEqual({ totalCount: 1, edges: [{ node: { id: "source.saw-book" } }] });
  });
});
