import { describe, expect, it } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { sawGraph, sawnChest } from "#tests/support/saw-graph.ts";

const DATINGS = `query ($piece: PieceInput!, $revision: Int) {
  datings(piece: $piece, revision: $revision) {
    __typename
    ... on Datings { revision isCut features { feature label paths { via dated isOut } } }
    ... on Refused { problems { code path } }
  }
}`;

describe("datings", () => {
  it("[A53] gives every way from what was seen to a date, and whether the claimed years are left room", async () => {
    const { ask } = await openApi([sawGraph]);
    const { data, errors } = await ask(DATINGS, { piece: sawnChest });
    expect(errors).toEqual([]);
    expect(data.datings).toMatchObject({ __typename: "Datings", revision: 1, isCut: false });
    const [marks] = data.datings.features;
    expect(marks).toMatchObject({ feature: "feature.round-saw-marks", label: "CONTRADICTORY" });
    expect(marks.paths).toContainEqual({ via: ["claim.marks"], dated: "claim.saw", isOut: true });
  });

  it("[A53] reads an earlier revision, and refuses what examining refuses", async () => {
    const saw = sawGraph.filter((edit) => edit.after?.id === "claim.saw");
    const { ask } = await openApi([sawGraph.filter((edit) => !saw.includes(edit)), saw]);
    const { data: first } = await ask(DATINGS, { piece: sawnChest, revision: 1 });
    expect(first.datings.features[0]).toMatchObject({ label: "SILENT", paths: [] });
    const piece = {
      ...sawnChest,
      observations: sawnChest.observations.map((made) => ({ ...made, feature: "feature.unknown" })),
    };
    const { data: refused } = await ask(DATINGS, { piece });
    expect(refused.datings).toMatchObject({ problems: [{ code: "UNKNOWN_TERM" }] });
  });
});
