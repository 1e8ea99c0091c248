import { describe, expect, it } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { regionGraph } from "#tests/support/region-graph.ts";

const PROFILE = `own within unsourced missingKinds region { label } wider { id } centre { id }
  narrower { own region { id } }
  found { group subject { id } claims { says citations { basis source { text } } } }
  notFound { id } besideWider { lag } besideCentre { lag subject { label } here { id } there { region { label } } }
  sources { claims source { id } }`;

describe("regions", () => {
  it("[R1] are listed with their claims counted", async () => {
    const { ask } = await openApi([regionGraph]);
    const { data, errors } = await ask("{ regions { own within region { id } } }");
    expect(errors).toEqual([]);
    expect(data.regions).toHaveLength(11);
    expect(data.regions).toContainEqual({ own: 1, within: 6, region: { id: "region.massachusetts" } });
  });

  it("[R2] [R7] have a profile with what was there and where it is known from", async () => {
    const { ask } = await openApi([regionGraph]);
    const { data, errors } = await ask(`{ regionProfile(id: "region.boston") { ${PROFILE} } }`);
    expect(errors).toEqual([]);
    expect(data.regionProfile).toMatchObject({
      ...{ own: 3, within: 3, unsourced: 1, missingKinds: ["FORM", "PRACTICE"], narrower: [] },
      ...{
        region: { label: "Boston" },
        wider: { id: "region.massachusetts" },
        centre: { id: "region.london" },
      },
      notFound: [{ id: "claim.no-kast" }, { id: "claim.shell-salem" }],
      besideWider: [{ lag: [10, 10] }],
      besideCentre: [
        { lag: [25, 35], here: { id: "claim.plain-boston" }, there: { region: { label: "Britain" } } },
      ],
      sources: [{ claims: 2, source: { id: "source.one" } }],
    });
    expect(data.regionProfile.found[0]).toMatchObject({ group: "PRACTICE", subject: { id: "style.plain" } });
  });

  it("[R8] are read with a call for each region within them, and one for what is claimed besides of what is there", async () => {
    const { ask } = await openApi([regionGraph]);
    const ask3 = (of: readonly string[]) =>
      ask(`query ($of: [ID!]!) { regionProfiles(of: $of) { within found { subject { label } } } }`, { of });
    const one = await ask3(["region.boston"]);
    const three = await ask3(["region.boston", "region.salem", "region.britain"]);
    expect(three.errors).toEqual([]);
    expect(three.data.regionProfiles.map(({ within }: { within: number }) => within)).toEqual([3, 2, 1]);
    expect(one.calls).toEqual(["allClaims", "neighbourhood", "terms"]);
    // Boston, Salem, and Britain with London within it.
    expect(three.calls.filter((call) => call === "allClaims")).toHaveLength(4);
    expect(three.calls.filter((call) => call !== "allClaims")).toEqual(["neighbourhood", "terms"]);
  });

  it("[R8] that there are not are null or left out, and more than three are refused", async () => {
    const { ask } = await openApi([regionGraph]);
    expect((await ask('{ regionProfile(id: "tool.lathe") { own } }')).data).toEqual({ regionProfile: null });
    const some = await ask('{ regionProfiles(of: ["region.atlantis", "region.salem"]) { own } }');
    expect(some.data.regionProfiles).toEqual([{ own: 2 }]);
    const many = await ask('{ regionProfiles(of: ["a", "b", "c", "d"]) { own } }');
    expect(many.errors).toMatchObject([{ extensions: { code: "BAD_USER_INPUT" } }]);
    expect(many.calls).toEqual([]);
  });

  it("[A4] are read on the revision asked for", async () => {
    const { ask } = await openApi([
      regionGraph.filter(({ kind }) => kind === "term"),
      regionGraph.filter(({ kind }) => kind !== "term"),
    ]);
    const before = await ask(
      '{ regionProfile(id: "region.boston", revision: 1) { within region { label } } }',
    );
    expect(before.data.regionProfile).toEqual({ within: 0, region: { label: "Boston" } });
    const never = await ask("{ regions(revision: 9) { own } }");
    expect(never.errors).toMatchObject([{ extensions: { code: "UNKNOWN_REVISION" } }]);
  });

  it("[R10] and kinds of part lead to the features looked for", async () => {
    const { ask } = await openApi([regionGraph]);
    const { data } = await ask(
      '{ part: term(id: "part.drawer") { featuresOnPart { part { id } features { label } } } tool: term(id: "tool.lathe") { featuresOnPart { part { id } } } }',
    );
    expect(data.part.featuresOnPart[0]).toEqual({
      part: { id: "part.drawer" },
      features: [{ label: "wear of a drawer" }, { label: "carved shell" }],
    });
    expect(data.tool.featuresOnPart).toEqual([]);
  });
});
