import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import { regionsSuggested, typicalWeight } from "#server/reasoning/rival-stories/typical.ts";
import type { ClaimSketch } from "#tests/support/build-claim.ts";
import { aTree } from "#tests/support/build-neighbourhood.ts";
import type { ObservationSketch } from "#tests/support/build-piece.ts";
import { subjectOf } from "#tests/support/weigh-sketch.ts";

const terms = aTree("region", {
  "region.world": {
    "region.north": { "region.town": {}, "region.farm": {} },
    "region.south": {},
    "region.east": {},
    "region.west": {},
  },
});
const typical = (
  name: string,
  subject: string,
  object: string,
  more: Partial<ClaimSketch> = {},
): ClaimSketch => ({
  ...{ id: name, relation: "typical of", subject, object, strength: "usual" },
  ...more,
});
const read = (claims: readonly ClaimSketch[], observations: readonly ObservationSketch[], region?: string) =>
  subjectOf(claims, { observations, ...(region ? { region } : {}) }, terms);
const seen = (feature: string, more: Partial<ObservationSketch> = {}): ObservationSketch => ({
  ...{ id: `o.${feature}`, part: "leg", feature },
  ...more,
});
const suggest = (...from: Parameters<typeof read>) => regionsSuggested(read(...from), ASSUMED_ODDS, 3);

describe("[V4] regions that are suggested", () => {
  it("are those that what was seen is typical of, but the claimed one, and what lies in or around it", () => {
    const claims = [
      typical("a", "F", "region.south"),
      typical("b", "F", "region.north"),
      typical("c", "G", "region.town"),
    ];
    expect(suggest(claims, [seen("F"), seen("G")], "region.town")).toEqual(["region.south"]);
    expect(suggest(claims, [seen("F"), seen("G")], "region.north")).toEqual(["region.south"]);
    expect(suggest(claims, [seen("F")], "region.east")).toEqual(["region.north", "region.south"]);
    expect(suggest(claims, [seen("G")])).toEqual(["region.town"]);
  });

  it("are not suggested by what is absent or could not be seen", () => {
    const claims = [typical("a", "F", "region.south")];
    expect(suggest(claims, [seen("F", { seen: "absent" })], "region.farm")).toEqual([]);
    expect(suggest(claims, [seen("F", { seen: "unseen" })], "region.farm")).toEqual([]);
  });

  it("are three at most, those that the most speaks for", () => {
    const claims = [
      ...["south", "east", "west"].map((name) =>
        typical(`one.${name}`, "F", `region.${name}`, { strength: "firm" }),
      ),
      typical("weak", "F", "region.town", { strength: "tentative" }),
    ];
    expect(suggest(claims, [seen("F")], "region.farm")).toEqual([
      "region.east",
      "region.south",
      "region.west",
    ]);
  });
});

describe("[V5] what is typical of a region", () => {
  const claims = [typical("a", "F", "region.south", { strength: "firm" })];
  const weight = (
    region: string,
    more: Partial<ObservationSketch> = {},
    extra: readonly ClaimSketch[] = [],
    also: readonly ObservationSketch[] = [],
  ) =>
    typicalWeight(
      read([...claims, ...extra], [seen("F", more), ...also]),
      id<"term">(region),
      ASSUMED_ODDS,
    ).get("o.F");
  const { misread, baseRate, detect, notTypical } = ASSUMED_ODDS;
  const reported = (p: number) => (1 - misread.sure) * p + misread.sure * baseRate;

  it("is likelier there than elsewhere, and excluded nowhere", () => {
    expect(weight("region.south")).toBeCloseTo(Math.log10(reported(ASSUMED_ODDS.typical.firm)), 12);
    expect(weight("region.farm")).toBeCloseTo(Math.log10(reported(notTypical)), 12);
    expect(weight("region.farm")).toBeGreaterThan(-2);
  });

  it("speaks the other way where it was looked for and is absent", () => {
    expect(weight("region.south", { seen: "absent" })).toBeCloseTo(
      Math.log10(1 - detect * reported(ASSUMED_ODDS.typical.firm)),
      12,
    );
  });

  it("says nothing where it could not be seen, or an exception sets it aside", () => {
    expect(weight("region.south", { seen: "unseen" })).toBeUndefined();
    const exception = { id: "x", relation: "void when", of: "a", condition: "G" } as const;
    expect(weight("region.south", {}, [exception], [seen("G")])).toBeUndefined();
  });
});
