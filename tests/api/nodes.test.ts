import { describe, expect, it } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { sawGraph, sawnChest } from "#tests/support/saw-graph.ts";

describe("nodes", () => {
  it("[A2] anything is found by its id, and tells what it is", async () => {
    const { ask } = await openApi([sawGraph]);
    const { data: made } = await ask(
      "mutation ($piece: PieceInput!) { createExamination(piece: $piece) { ... on ExaminationChanged { examination { id } } } }",
      { piece: sawnChest },
    );
    const examination = made.createExamination.examination.id;
    const { data, errors } = await ask(
      `query ($examination: ID!) {
        term: node(id: "tool.circular-saw") { __typename id ... on Term { label } }
        claim: node(id: "claim.saw") { __typename id }
        source: node(id: "source.saw-book") { __typename id }
        examination: node(id: $examination) { __typename id ... on Examination { version } }
        nothing: node(id: "claim.no-such") { id }
        odd: node(id: "") { id }
      }`,
      { examination },
    );
    expect(errors).toEqual([]);
    expect(data).toEqual({
      term: { __typename: "Term", id: "tool.circular-saw", label: "circular saw" },
      claim: { __typename: "Claim", id: "claim.saw" },
      source: { __typename: "Source", id: "source.saw-book" },
      examination: { __typename: "Examination", id: examination, version: 1 },
      nothing: null,
      odd: null,
    });
  });
});
