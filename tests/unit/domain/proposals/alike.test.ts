import { describe, expect, it } from "vitest";
import type { Draft } from "#server/domain/draft.ts";
import { findAlikeClaims } from "#server/domain/proposals/alike/find-alike-claims.ts";
import { findAlikeTerms } from "#server/domain/proposals/alike/find-alike-terms.ts";
import { broaderTerms } from "#server/domain/region.ts";
import { aTerm } from "#tests/support/build-change.ts";
import { aClaim, type ClaimSketch } from "#tests/support/build-claim.ts";

const broader = broaderTerms([
  aTerm("region.england", { broader: "region.britain" }),
  aTerm("region.wales", { broader: "region.britain" }),
  aTerm("region.britain"),
]);
const standing = (rest: Partial<ClaimSketch>) =>
  aClaim({
    id: "claim.old",
    relation: "introduced",
    subject: "tool.a",
    when: "1790",
    region: "region.england",
    ...rest,
  });
const draft = (rest: Record<string, unknown> = {}): Draft => ({
  ...{ id: "claim.new", relation: "introduced", subject: "tool.a", when: "178X/179X" },
  scope: { region: "region.britain" },
  ...rest,
});
const alike = (mine: Draft, theirs = standing({})) =>
  findAlikeClaims(mine, [theirs], broader).map(({ by }) => by);

describe("a claim that may stand already", () => {
  it("[J42] is one of the same subject and relation, with years that overlap, in regions that do", () => {
    expect(alike(draft())).toEqual(["same claim"]);
    expect(alike(draft({ scope: {} }))).toEqual(["same claim"]);
    expect(alike(draft({ when: "1800" }))).toEqual([]);
    expect(alike(draft({ scope: { region: "region.wales" } }))).toEqual([]);
    expect(alike(draft({ subject: "tool.b" }))).toEqual([]);
    expect(alike(draft({ relation: "attested" }))).toEqual([]);
  });

  it("[J42] is named while the draft still lacks its date or its region", () => {
    expect(alike(draft({ when: undefined, scope: undefined }))).toEqual(["same claim"]);
    expect(alike(draft({ when: "c. nonsense" }))).toEqual(["same claim"]);
  });

  it("[J42] of what is made with something shares a tool", () => {
    const made = standing({ relation: "requires", ways: [["tool.b", "tool.c"]], when: undefined as never });
    const mine = (ways: readonly string[][]) => draft({ relation: "requires", ways, when: undefined });
    expect(alike(mine([["tool.c"]]), made)).toEqual(["same claim"]);
    expect(alike(mine([["tool.d"]]), made)).toEqual([]);
  });

  it("[J42] is also one out of the same place of the same source, however the place is written", () => {
    const cited = (locator: string) => [{ basis: "published", source: "source.a", locator }];
    const old = standing({ subject: "tool.b", citations: cited("p. 12") as never });
    expect(alike(draft({ citations: cited("P 12") }), old)).toEqual(["same source and place"]);
    expect(alike(draft({ citations: cited("p. 13") }), old)).toEqual([]);
  });

  it("[J42] is neither itself nor one that was rejected", () => {
    expect(alike(draft({ id: "claim.old" }))).toEqual([]);
    expect(alike(draft(), standing({ status: "rejected" }))).toEqual([]);
  });
});

describe("a term that may stand already", () => {
  it("[J42] shares a label, of whatever kind, accents, capitals and signs aside", () => {
    const terms = [
      aTerm("tool.pit-saw", { otherLabels: ["Whip-saw"] }),
      aTerm("feature.whip"),
      aTerm("tool.scie", { label: "Scié" }),
    ];
    const found = (label: string) => findAlikeTerms({ label }, terms).map(({ id }) => id);
    expect(found("whip saw")).toEqual(["tool.pit-saw"]);
    expect(found("PIT  SAW")).toEqual(["tool.pit-saw"]);
    expect(found("scie")).toEqual(["tool.scie"]);
    expect(found("saw")).toEqual([]);
  });
});
