import { describe, expect, it } from "vitest";
import { checkOdds } from "#server/domain/check-odds.ts";
import type { Piece } from "#server/domain/examination.ts";
import { id } from "#server/domain/ids.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import { type ChosenOdds, oddsFor } from "#server/domain/weighing/chosen-odds.ts";

const top = id<"part">("top");
const piece = (odds: ChosenOdds): Piece => ({
  ...{ title: "An invented table", invented: true, examined: 2026, attribution: { date: "1760" } },
  ...{ parts: [{ id: top, label: "top" }], observations: [], together: [], separate: [], odds },
});
const half = { part: top, original: 0.5, later: 0.4, reused: 0.1 };

describe("[G33] chosen odds", () => {
  it("pass where they are odds", () => {
    expect(checkOdds(piece({ parts: [half], wrongClaims: 2, leak: 0.01, datePrior: "as claimed" }))).toEqual(
      [],
    );
  });

  it.each<[string, ChosenOdds, string, string]>([
    ["that do not add up", { parts: [{ ...half, later: 0.3 }] }, "IMPOSSIBLE_ODDS", "odds.parts.0"],
    ["below 0", { parts: [{ ...half, later: -0.1, original: 1 }] }, "IMPOSSIBLE_ODDS", "odds.parts.0"],
    [
      "that are certain",
      { parts: [{ ...half, original: 1, later: 0, reused: 0 }] },
      "IMPOSSIBLE_ODDS",
      "odds.parts.0",
    ],
    ["that are no number", { parts: [{ ...half, later: Number.NaN }] }, "IMPOSSIBLE_ODDS", "odds.parts.0"],
    [
      "of no part of it",
      { parts: [{ ...half, part: id<"part">("leg") }] },
      "UNKNOWN_PART",
      "odds.parts.0.part",
    ],
    ["given twice", { parts: [half, half] }, "DUPLICATE_ID", "odds.parts.1"],
    ["with claims always wrong", { wrongClaims: 1000 }, "IMPOSSIBLE_ODDS", "odds.wrongClaims"],
    ["with a leak of all", { leak: 1 }, "IMPOSSIBLE_ODDS", "odds.leak"],
    ["with deceit certain", { madeToDeceive: 1 }, "IMPOSSIBLE_ODDS", "odds.madeToDeceive"],
  ])("%s are refused at the place", (_, odds, code, path) => {
    expect(checkOdds(piece(odds)).map((each) => [each.code, each.path.join(".")])).toEqual([[code, path]]);
  });

  it("take the place of what is assumed, and nothing else does", () => {
    expect(oddsFor()).toEqual(ASSUMED_ODDS);
    const odds = oddsFor({ parts: [half], wrongClaims: 2 });
    expect(odds.ofParts).toEqual([{ part: top, odds: { original: 0.5, later: 0.4, reused: 0.1 } }]);
    expect(odds.wrongClaim.usual).toBeCloseTo(0.1, 12);
    expect(odds.states).toBe(ASSUMED_ODDS.states);
  });

  it("have every row of the table add up to 1", () => {
    for (const { odds } of [...ASSUMED_ODDS.states, { odds: ASSUMED_ODDS.otherwise }])
      expect(odds.original + odds.later + odds.reused).toBeCloseTo(1, 12);
  });
});
