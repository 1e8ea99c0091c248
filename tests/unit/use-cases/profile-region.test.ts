import { beforeAll, describe, expect, it } from "vitest";
import { id, type TermId } from "#server/domain/ids.ts";
import { isProblem } from "#server/domain/problem.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { profileRegion, type RegionProfile } from "#server/use-cases/ask/profile-region.ts";
import { type RegionEvidence, readRegionEvidence } from "#server/use-cases/ask/read-region-evidence.ts";
import { surveyRegions } from "#server/use-cases/ask/surveys/region-survey.ts";
import { regionGraph } from "#tests/support/region-graph.ts";

let evidence: RegionEvidence;
/** Each from what is read for it alone. */
let profiles: Map<TermId, RegionProfile | undefined>;
beforeAll(async () => {
  const store = openMemoryStore();
  const made = await store.commit({
    change: regionGraph,
    by: "test",
    at: "2026-01-01T00:00:00Z",
    message: "test",
  });
  if (isProblem(made)) throw new Error(made.message);
  const survey = await surveyRegions(store, 1);
  evidence = await readRegionEvidence({ store }, survey, [...survey.regions.keys()], 1);
  profiles = new Map();
  for (const region of survey.regions.keys()) {
    const own = await readRegionEvidence({ store }, survey, [region], 1);
    profiles.set(region, profileRegion(own, region));
  }
});
const profileOf = (region: string) => {
  const profile = profiles.get(id<"term">(region));
  if (!profile) throw new Error(`no ${region}`);
  return profile;
};

describe("the profile of a region", () => {
  it("[R1] counts accepted claims once for the region named and once for each around it", () => {
    const counts = new Map(
      evidence.survey.counts().map(({ region, own, within }) => [region, [own, within]]),
    );
    expect(counts.get(id<"term">("region.boston"))).toEqual([3, 3]);
    expect(counts.get(id<"term">("region.salem"))).toEqual([2, 2]);
    // Its own: not found there; the rejected lathe counts nowhere.
    expect(counts.get(id<"term">("region.massachusetts"))).toEqual([1, 6]);
    // Confined to Salem within the United States names both and is one claim.
    expect(counts.get(id<"term">("region.united-states"))).toEqual([2, 7]);
  });

  it("[R2] puts what was there in groups, a feature that is but the sight of a wood among the woods", () => {
    const found = profileOf("region.boston").found.map(({ subject, group }) => [subject, group]);
    expect(found).toEqual([
      ["style.plain", "practice"],
      ["feature.pine-inside", "wood"],
      ["maker.wharf-shop", "shop"],
    ]);
    const wider = profileOf("region.massachusetts").found.map(({ subject }) => subject);
    expect(wider).toContain("practice.stacking");
    expect(wider).toContain("feature.shell");
    expect(wider).not.toContain("form.kast");
    expect(wider).not.toContain("tool.lathe");
  });

  it("[R3] says not made there of what is not found around it and of what was made elsewhere in its country", () => {
    const notFound = (region: string) => profileOf(region).notFound.map((claim) => claim.id);
    expect(notFound("region.boston")).toEqual(["claim.no-kast", "claim.shell-salem"]);
    expect(notFound("region.salem")).toEqual(["claim.no-kast"]);
    expect(notFound("region.massachusetts")).toEqual(["claim.no-kast"]);
    expect(notFound("region.france")).toEqual([]);
    expect(notFound("region.london")).toEqual([]);
  });

  it("[R5] [R6] tells its lag behind the nearest wider region and behind the centre of fashion", () => {
    const { besideWider, besideCentre, centre } = profileOf("region.boston");
    expect(centre).toBe("region.london");
    expect(besideWider).toMatchObject([{ there: { id: "claim.plain-states" }, lag: [10, 10] }]);
    // London has no date of its own: that of Britain stands for it, about 1700 with five years to both sides.
    expect(besideCentre).toMatchObject([{ there: { id: "claim.plain-britain" }, lag: [25, 35] }]);
    expect(profileOf("region.london").centre).toBeUndefined();
    expect(profileOf("region.britain").centre).toBeUndefined();
  });

  it("[R7] counts its sources and what it lacks beside its wider region", () => {
    const boston = profileOf("region.boston");
    expect(boston.sources).toEqual([{ source: "source.one", claims: 2 }]);
    expect(boston.unsourced).toBe(1);
    expect(boston.wider).toBe("region.massachusetts");
    expect(boston.missingKinds).toEqual(["form", "practice"]);
    expect(profileOf("region.world").missingKinds).toEqual([]);
  });

  it("is none where there is no such region", () => {
    expect(profileRegion(evidence, id<"term">("region.atlantis"))).toBeUndefined();
    expect(profileRegion(evidence, id<"term">("tool.lathe"))).toBeUndefined();
  });

  it("[R8] is the same from what is read for it alone as from what is read for several", () => {
    for (const [region, profile] of profiles) expect(profileRegion(evidence, region)).toEqual(profile);
  });
});
