import { describe, expect, it } from "vitest";
import type { Claim } from "#server/domain/claim.ts";
import { verdictsAfter } from "#server/reasoning/verdicts-after.ts";
import { verdictsOn } from "#server/reasoning/verdicts-on.ts";
import { replacing, withdrawing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { neighbourhoodOf } from "#tests/support/build-neighbourhood.ts";
import { aPiece } from "#tests/support/build-piece.ts";

const needs = aClaim({ id: "claim.n", relation: "requires", subject: "feature.a", ways: [["tool.a"]] });
const begins = aClaim({ id: "claim.b", relation: "introduced", subject: "tool.a", when: "1790" });
const shown = aClaim({ id: "claim.s", relation: "attested", subject: "tool.a", when: "1820" });
const piece = aPiece({ date: "1760", observations: [{ id: "o1", part: "p", feature: "feature.a" }] });

const gone = aClaim({ id: "claim.g", relation: "discontinued", subject: "feature.b", when: "1765" });
const early = aPiece({
  date: "1760",
  observations: [
    { id: "o1", part: "p", feature: "feature.a" },
    ...["q", "r", "s"].map((part, n) => ({ id: `o${n + 2}`, part, feature: "feature.b" })),
  ],
});

const without = (claim: Claim) => {
  const all = [needs, begins, shown];
  const [before, after] = [all, all.filter((one) => one !== claim)].map((claims) =>
    neighbourhoodOf([], claims, ["feature.a"]),
  );
  return { before, after, change: withdrawing(claim) } as const;
};

describe("what a piece comes to after a change", () => {
  it("[K10] is found to be the same without being worked out where nothing it rests on is another", () => {
    const { before, after, change } = without(shown);
    if (!before || !after) throw new Error("no neighbourhood");
    expect(verdictsAfter(piece, before, after, change, () => verdictsOn(piece, before))).toBe("same");
    expect(verdictsOn(piece, after)).toEqual(verdictsOn(piece, before));
  });

  it("[K10] is worked out where it can be another", () => {
    const { before, after, change } = without(begins);
    if (!before || !after) throw new Error("no neighbourhood");
    const found = verdictsAfter(piece, before, after, change, () => verdictsOn(piece, before));
    expect(found).toEqual(verdictsOn(piece, after));
    expect(found).not.toEqual(verdictsOn(piece, before));
  });

  it("[K10] [K12] weighs its parts anew where a claim is firmer, and finds nothing otherwise", () => {
    const [loose, firm] = (["tentative", "certain"] as const).map((strength) => ({ ...begins, strength }));
    if (!loose || !firm) throw new Error("no claims");
    const seeds = ["feature.a", "feature.b"];
    const [was, is] = [loose, firm].map((claim) => neighbourhoodOf([], [needs, claim, gone], seeds));
    if (!was || !is) throw new Error("no neighbourhood");
    const known = verdictsOn(early, was);
    const found = verdictsAfter(early, was, is, replacing(loose, firm), () => known);
    expect(found).toEqual(verdictsOn(early, is));
    if (found === "same") throw new Error("nothing was weighed");
    expect(found.findings).toEqual(known.findings);
    expect([known, found].map(({ states }) => states[0]?.likely.state)).toEqual(["original", "later"]);
  });
});
