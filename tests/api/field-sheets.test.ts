import { describe, expect, it } from "vitest";
import { put } from "#tests/support/build-graph.ts";
import { openApi } from "#tests/support/open-api.ts";
import { sheetGraph } from "#tests/support/sheet-graph.ts";

const SHEET = `query ($form: ID!, $region: ID, $date: String, $each: Int! = 5, $revision: Int) {
  fieldSheet(form: $form, region: $region, date: $date, each: $each, revision: $revision) {
    __typename
    ... on FieldSheet {
      revision form { label } region { label } date parts { id }
      sections {
        position part { label } more again { id }
        entries { tells means bases feature { id looking { how } } claims { id citations { source { id } } } }
      }
    }
    ... on Refused { problems { code message path instead } }
  }
}`;
const BUREAU = { form: "form.bureau", region: "region.home" };

describe("field sheets", () => {
  it("[F8] are given whole, each thing to look for with its words, claims and bases", async () => {
    const { ask } = await openApi([sheetGraph]);
    const { data, errors } = await ask(SHEET, { ...BUREAU, date: "1760/1770" });
    expect(errors).toEqual([]);
    expect(data.fieldSheet).toMatchObject({
      ...{ revision: 1, form: { label: "bureau" }, region: { label: "Home" }, date: "1760/1770" },
      parts: [{ id: "part.carcase" }, { id: "part.back" }, { id: "part.drawer" }, { id: "part.foot" }],
    });
    const [foot, drawer, carcase, back] = data.fieldSheet.sections;
    expect([foot, drawer, carcase, back].map(({ position }) => position)).toEqual([
      "FRONT",
      "DRAWERS_OUT",
      "DRAWERS_OUT",
      "BACK",
    ]);
    expect(drawer.entries[0]).toEqual({
      ...{ tells: "BOUND", means: "Possible 1800 or later. 30 years too late for the claimed date." },
      bases: ["PUBLISHED", "COMMON_PRACTICE"],
      feature: {
        id: "feature.arcs",
        looking: { how: "Rake the lamp across the board. Measure three arcs." },
      },
      claims: [
        { id: "claim.arcs", citations: [{ source: null }] },
        { id: "claim.disc-saw", citations: [{ source: { id: "source.saws" } }] },
      ],
    });
    expect(foot.entries[0].means).toBe("On record in Home, 1690.");
  });

  it("[F8] are refused as data, everything at once, each at its place", async () => {
    const { ask } = await openApi([sheetGraph]);
    const { data, errors } = await ask(SHEET, {
      form: "form.bureaux",
      region: "region.nowhere",
      date: "c. 1770",
    });
    expect(errors).toEqual([]);
    expect(data.fieldSheet.problems).toMatchObject([
      { code: "UNREADABLE_DATING", path: ["date"], instead: "1770~" },
      { code: "UNKNOWN_TERM", path: ["region"] },
      { code: "UNKNOWN_TERM", path: ["form"], instead: "form.bureau" },
    ]);
    const other = await ask(SHEET, { form: "tool.disc-saw" });
    expect(other.data.fieldSheet.problems).toMatchObject([{ code: "WRONG_KIND_OF_TERM", path: ["form"] }]);
  });

  it("[F8] have one to eight features a part, and are refused more before anything is read", async () => {
    const { ask } = await openApi([sheetGraph]);
    for (const each of [0, 9]) {
      const { errors, calls } = await ask(SHEET, { ...BUREAU, each });
      expect(errors).toMatchObject([{ extensions: { code: "BAD_USER_INPUT" } }]);
      expect(calls).toEqual([]);
    }
    const { data } = await ask(SHEET, { ...BUREAU, each: 1 });
    for (const { entries } of data.fieldSheet.sections) expect(entries.length).toBeLessThanOrEqual(1);
  });

  it("[F8] take as many calls of the store for a long one as for a short one, and fewer once they are known", async () => {
    const short = await (await openApi([sheetGraph])).ask(SHEET, { ...BUREAU, each: 2, date: "1700" });
    const { ask } = await openApi([sheetGraph]);
    const long = await ask(SHEET, { ...BUREAU, each: 8, date: "1700" });
    expect(long.data.fieldSheet.sections.length).toBeGreaterThan(2);
    expect(long.calls.toSorted()).toEqual(short.calls.toSorted());
    expect(long.calls.length).toBeLessThanOrEqual(10);
    const again = await ask(SHEET, { ...BUREAU, each: 8, date: "1700" });
    expect(again.data).toEqual(long.data);
    expect(again.calls).not.toContain("neighbourhood");
  });

  it("[A4] [F8] are drawn up on the revision asked for", async () => {
    const isSlips = (edit: { readonly after?: { readonly id: string } }) => edit.after?.id === "claim.slips";
    const { ask } = await openApi([
      sheetGraph.filter((edit) => !isSlips(edit)),
      sheetGraph.filter(isSlips),
      [put("term", { id: "part.lid", kind: "part", label: "lid" })],
    ]);
    const featuresOn = async (revision?: number) => {
      const { data } = await ask(SHEET, { ...BUREAU, revision });
      return JSON.stringify(data.fieldSheet.sections);
    };
    expect(await featuresOn(1)).not.toContain("feature.slips");
    expect(await featuresOn(2)).toContain("feature.slips");
    expect(await featuresOn()).toContain("feature.slips");
    const never = await ask(SHEET, { ...BUREAU, revision: 9 });
    expect(never.data.fieldSheet.problems).toMatchObject([{ code: "UNKNOWN_REVISION" }]);
  });
});
