import { describe, expect, it } from "vitest";
import type { Claim } from "#server/domain/claim.ts";
import { verdictsAfter } from "#server/reasoning/verdicts-after.ts";
import { verdictsOn } from "#server/reasoning/verdicts-on.ts";
import { withdrawing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { neighbourhoodOf } from "#tests/support/build-neighbourhood.ts";
import { aPiece } from "#tests/support/build-piece.ts";

const needs = aClaim({ id: "claim.n", relation: "requires", subject: "feature.a", ways: [["tool.a"]] });
const begins = aClaim({ id: "claim.b", relation: "introduced", subject: "tool.a", when: "1790" });
const shown = aClaim({ id: "claim.s", relation: "attested", subject: "tool.a", when: "1820" });
const piece = aPiece({ date: "1760", observations: [{ id: "o1", part: "p", feature: "feature.a" }] });

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
    expect(verdictsAfter(piece, before, after, change)).toBe("same");
    expect(verdictsOn(piece, after)).toEqual(verdictsOn(piece, before));
  });

  it("[K10] is worked out where it can be another", () => {
    const { before, after, change } = without(begins);
    if (!before || !after) throw new Error("no neighbourhood");
    const found = verdictsAfter(piece, before, after, change);
    expect(found).toEqual(verdictsOn(piece, after));
    expect(found).not.toEqual(verdictsOn(piece, before));
  });
});
