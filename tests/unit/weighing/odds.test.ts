import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkOdds } from "#server/domain/check-odds.ts";
import { id } from "#server/domain/ids.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { chooseOdds, removePart } from "#web/examination/edit-piece.ts";
import { chosenOf, withChosen, withPartOdds } from "#web/weighing/choose-odds.ts";
import { LEAST, MOST, moveOdds, PLAIN_STATES } from "#web/weighing/linked-odds.ts";
import { oddsOfParts, sameOdds } from "#web/weighing/same-odds.ts";

const top = id<"part">("top");
const foot = id<"part">("foot");
const THIRDS = { original: 0.8, later: 0.17, reused: 0.03 };
const anyPiece = () => aPiece({ date: "1770", parts: ["top", "foot"] });

describe("[Y11] the shares of a part", () => {
  it("leave the rest in the proportion it had", () => {
    expect(moveOdds({ original: 0.5, later: 0.3, reused: 0.2 }, "original", 0.75)).toEqual({
      original: 0.75,
      later: 0.15,
      reused: 0.1,
    });
  });

  it("always add up to 1, none 0 or 1, whatever is moved and how often, and can be stored", () => {
    const move = fc.tuple(fc.constantFrom(...PLAIN_STATES), fc.double({ min: -1, max: 2, noNaN: true }));
    fc.assert(
      fc.property(fc.array(move, { minLength: 1, maxLength: 12 }), (moves) => {
        const odds = moves.reduce((before, [state, to]) => moveOdds(before, state, to), THIRDS);
        for (const state of PLAIN_STATES) {
          expect(odds[state]).toBeGreaterThanOrEqual(LEAST - 1e-9);
          expect(odds[state]).toBeLessThanOrEqual(MOST + 1e-9);
        }
        const chosen = withPartOdds({}, [top], odds);
        expect(checkOdds(chooseOdds(chosen)(anyPiece()))).toEqual([]);
      }),
    );
  });

  it("are set for all that share a state, and taken away again", () => {
    const chosen = withPartOdds({ leak: 0.01 }, [top, foot], THIRDS);
    expect(chosen.parts?.map(({ part }) => part)).toEqual(["top", "foot"]);
    expect(chosenOf(chosen, [foot])).toEqual(THIRDS);
    expect(withPartOdds(chosen, [top, foot], undefined)).toEqual({ leak: 0.01 });
  });
});

describe("[Y12] what is assumed of a piece", () => {
  it("is nothing where all is as assumed", () => {
    const chosen = withChosen({}, "wrongClaims", 2);
    expect(withChosen(chosen, "wrongClaims", undefined)).toEqual({});
    const kept = chooseOdds(chosen)(anyPiece());
    expect(kept.odds).toEqual({ wrongClaims: 2 });
    expect(chooseOdds({})(kept)).not.toHaveProperty("odds");
  });

  it("is the same whatever the order of the parts", () => {
    const one = withPartOdds(withPartOdds({}, [top], THIRDS), [foot], THIRDS);
    const other = withPartOdds(withPartOdds({}, [foot], THIRDS), [top], THIRDS);
    expect(sameOdds(one, other)).toBe(true);
    expect(sameOdds(one, withChosen(other, "leak", 0.01))).toBe(false);
    expect(sameOdds(undefined, {})).toBe(true);
  });

  it("[X8] goes with a part that is removed", () => {
    const piece = chooseOdds(withPartOdds({ leak: 0.01 }, [top, foot], THIRDS))(anyPiece());
    const without = removePart(top)(piece);
    expect(without.odds).toEqual({ leak: 0.01, parts: [{ part: "foot", ...THIRDS }] });
    expect(checkOdds(without)).toEqual([]);
    expect(removePart(foot)(without).odds).toEqual({ leak: 0.01 });
    const onlyTop = chooseOdds(withPartOdds({}, [top], THIRDS))(anyPiece());
    expect(removePart(top)(onlyTop)).not.toHaveProperty("odds");
    expect(oddsOfParts(piece.odds ?? {}, without.parts)).toEqual(without.odds);
  });
});
