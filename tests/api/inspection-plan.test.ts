import { describe, expect, it } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { sheetGraph } from "#tests/support/sheet-graph.ts";

const PLAN = `query ($form: ID!, $region: ID, $date: String!, $examined: Int! = 2026, $revision: Int) {
  inspectionPlan(form: $form, region: $region, date: $date, examined: $examined, revision: $revision) {
    __typename
    ... on InspectionPlan {
      revision form { label } region { label } date parts { id } considered
      items {
        rank position part { id } feature { id looking { how } } alsoOn { id } bits bitsOfState means bases
        ifSeen { claim log10 state says } ifAbsent { claim says } claims { id }
      }
    }
    ... on Refused { problems { code path instead } }
  }
}`;
const BUREAU = { form: "form.bureau", region: "region.home", date: "1760/1770" };

describe("plans of a look", () => {
  it("[N11] [N13] are given whole, each item with what its answers would do", async () => {
    const { ask } = await openApi([sheetGraph]);
    const { data, errors } = await ask(PLAN, BUREAU);
    expect(errors).toEqual([]);
    expect(data.inspectionPlan).toMatchObject({
      ...{ revision: 1, form: { label: "bureau" }, region: { label: "Home" }, date: "1760/1770" },
      parts: [{ id: "part.carcase" }, { id: "part.back" }, { id: "part.drawer" }, { id: "part.foot" }],
    });
    const { items, considered } = data.inspectionPlan;
    const arcs = items.find(({ feature }: { feature: { id: string } }) => feature.id === "feature.arcs");
    expect(arcs).toMatchObject({
      means: "Possible 1800 or later. 30 years too late for the claimed date.",
      bases: ["PUBLISHED", "COMMON_PRACTICE"],
      ifSeen: { claim: "RULES_OUT", says: expect.stringMatching(/^rules 1760 to 1770 out for the part/) },
      claims: [{ id: "claim.arcs" }, { id: "claim.disc-saw" }],
    });
    expect(considered).toBeGreaterThanOrEqual(items.length);
    expect(JSON.stringify(items)).not.toContain("feature.late-pigment");
  });

  it("[N11] are refused as data, everything at once, each at its place", async () => {
    const { ask } = await openApi([sheetGraph]);
    const { data, errors } = await ask(PLAN, { form: "form.bureaux", region: "region.no", date: "c. 1770" });
    expect(errors).toEqual([]);
    expect(data.inspectionPlan.problems).toMatchObject([
      { code: "UNREADABLE_DATING", path: ["date"], instead: "1770~" },
      { code: "UNKNOWN_TERM", path: ["region"] },
      { code: "UNKNOWN_TERM", path: ["form"], instead: "form.bureau" },
    ]);
    const early = await ask(PLAN, { ...BUREAU, examined: 1700 });
    expect(early.data.inspectionPlan.problems).toMatchObject([{ path: ["examined"] }]);
  });

  it("[N14] are the same when they are asked for again, and empty on an empty store of a revision", async () => {
    const { ask } = await openApi([sheetGraph]);
    const first = await ask(PLAN, BUREAU);
    const again = await ask(PLAN, BUREAU);
    expect(JSON.stringify(again.data)).toBe(JSON.stringify(first.data));
    const before = await ask(PLAN, { ...BUREAU, revision: 0 });
    expect(before.data.inspectionPlan.problems[0].code).toBe("UNKNOWN_TERM");
  });

  it("[N11] of a span of five centuries, or one open at its begin, are answers without a number that is none", async () => {
    const { ask } = await openApi([sheetGraph]);
    for (const date of ["1500/2000", "../1900", "1760", "1350"]) {
      const { data, errors } = await ask(PLAN, { ...BUREAU, date });
      expect(errors, date).toEqual([]);
      expect(data.inspectionPlan.__typename, date).toBe("InspectionPlan");
      expect(JSON.stringify(data), date).not.toMatch(/NaN|Infinity/);
    }
  });
});
