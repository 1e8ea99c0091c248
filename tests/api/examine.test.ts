import { describe, expect, it } from "vitest";
import { canonicalJson } from "#server/domain/canonical-json.ts";
import { readReport } from "#server/formats/read-report.ts";
import { openApi } from "#tests/support/open-api.ts";
import { sawGraph, sawnChest } from "#tests/support/saw-graph.ts";

const EXAMINED = `
  fragment E on ExamineResult {
    __typename
    ... on Examined {
      revision report
      words {
        headline reasons
        findings { id says short steps { depth says claim assumed } paths }
        ruleOuts { id says steps { claim } }
        signs { observation claim says because look }
        parts { part says } gaps notSearched
      }
      terms { id label } claims { id says }
    }
    ... on Refused { problems { code path } }
  }`;
const EXAMINE = `${EXAMINED} query ($piece: PieceInput!, $revision: Int) {
  examine(piece: $piece, revision: $revision) { ...E }
}`;

const signed = {
  ...sawnChest,
  observations: [
    ...sawnChest.observations,
    { id: "o2", part: "carcase", feature: "feature.rough-ground", seen: "PRESENT", sureness: "PROBABLE" },
  ],
};

describe("examine", () => {
  it("answers with report, words, and what both name, and keeps nothing", async () => {
    const { ask, store } = await openApi([sawGraph]);
    const { data, errors } = await ask(EXAMINE, { piece: signed });
    expect(errors).toEqual([]);
    const { report, words, terms, claims, ...rest } = data.examine;
    expect(rest).toEqual({ __typename: "Examined", revision: 1 });
    expect(readReport(report)).toHaveProperty("format", "scribeline/report");
    expect(words.findings.map((finding: { id: string }) => finding.id)).toEqual(
      report.findings.map((finding: { id: string }) => finding.id),
    );
    expect(words.findings[0]).toMatchObject({ id: "o1", short: expect.stringContaining("15 years") });
    expect(words.findings[0].steps.map((step: { claim: string }) => step.claim)).toEqual(
      expect.arrayContaining(["claim.marks", "claim.saw"]),
    );
    expect(words.ruleOuts).toHaveLength(report.ruleOuts.length);
    expect(words.signs).toMatchObject([{ observation: "o2", claim: "claim.ground" }]);
    expect(words.parts.map((part: { part: string }) => part.part)).toEqual(["carcase", "bottom"]);
    expect(terms).toContainEqual({ id: "tool.circular-saw", label: "circular saw" });
    expect(claims).toContainEqual({ id: "claim.saw", says: expect.stringContaining("1790") });
    expect((await store.listExaminations({ first: 10 })).total).toBe(0);
  });

  it("[A7] gives the members of the report in canonical order", async () => {
    const { ask } = await openApi([sawGraph]);
    const { data } = await ask(EXAMINE, { piece: sawnChest });
    expect(JSON.stringify(data.examine.report)).toBe(canonicalJson(data.examine.report));
  });

  it("[A4] answers on an earlier revision, with the terms as they were, or refuses one that there is not", async () => {
    const saw = sawGraph.filter((edit) => edit.after?.id === "claim.saw");
    const { ask } = await openApi([sawGraph.filter((edit) => !saw.includes(edit)), saw]);
    const { data: first } = await ask(EXAMINE, { piece: sawnChest, revision: 1 });
    expect(first.examine).toMatchObject({ revision: 1, report: { ruleOuts: [] } });
    const { data: second } = await ask(EXAMINE, { piece: sawnChest });
    expect(second.examine.report.ruleOuts).toHaveLength(1);
    const { data: third } = await ask(EXAMINE, { piece: sawnChest, revision: 3 });
    expect(third.examine).toEqual({
      __typename: "Refused",
      problems: [{ code: "UNKNOWN_REVISION", path: ["revision"] }],
    });
  });

  it("[A4] examines what is kept as what is not, on each revision", async () => {
    const saw = sawGraph.filter((edit) => edit.after?.id === "claim.saw");
    const { ask } = await openApi([sawGraph.filter((edit) => !saw.includes(edit)), saw]);
    const { data: made } = await ask(
      `${EXAMINED} mutation ($piece: PieceInput!) { createExamination(piece: $piece) {
        ... on ExaminationChanged { examination { now: examined { ...E } before: examined(revision: 1) { ...E } } }
      } }`,
      { piece: signed },
    );
    const { now, before } = made.createExamination.examination;
    expect(now).toEqual((await ask(EXAMINE, { piece: signed })).data.examine);
    expect(before).toEqual((await ask(EXAMINE, { piece: signed, revision: 1 })).data.examine);
    expect(now).not.toEqual(before);
  });
});
