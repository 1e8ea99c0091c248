import { describe, expect, it } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

describe("terms", () => {
  it("[A2] a term shows what leads to and from it", async () => {
    const { ask } = await openApi([sawGraph]);
    const { data, errors } = await ask(`{
      term(id: "part.drawer-bottom") {
        id kind label otherLabels note
        broader { id } broaderTerms { id } narrower { totalCount }
        parts { id } aat { id }
        claims { totalCount } namedIn { totalCount }
      }
      marks: term(id: "feature.round-saw-marks") { otherLabels note parts { id } }
      saw: term(id: "tool.circular-saw") {
        aat { id label checked }
        claims { edges { node { id } } }
        namedIn { edges { node { id } } }
      }
      england: term(id: "region.england") { narrower { edges { node { id } } } }
    }`);
    expect(errors).toEqual([]);
    expect(data.term).toEqual({
      id: "part.drawer-bottom",
      kind: "PART",
      label: "drawer bottom",
      otherLabels: [],
      note: null,
      broader: { id: "part.drawer" },
      broaderTerms: [{ id: "part.drawer" }],
      narrower: { totalCount: 0 },
      parts: [],
      aat: null,
      claims: { totalCount: 0 },
      namedIn: { totalCount: 0 },
    });
    expect(data.marks).toEqual({
      otherLabels: ["arc marks"],
      note: "Arcs of one radius.",
      parts: [{ id: "part.drawer-bottom" }],
    });
    expect(data.saw.aat).toEqual({ id: "300022464", label: "circular saws", checked: false });
    expect(data.saw.claims.edges.map((edge: { node: { id: string } }) => edge.node.id)).toEqual([
      "claim.plain-saw",
      "claim.saw",
      "claim.spread",
    ]);
    expect(data.saw.namedIn.edges).toEqual([{ node: { id: "claim.marks" } }]);
    expect(data.england.narrower.edges).toEqual([{ node: { id: "region.london" } }]);
  });
});
