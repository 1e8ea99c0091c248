import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import type { Look, Looks } from "#server/domain/weighing/looks.ts";
import { chosenInWords, looksInWords } from "#server/reasoning/explain/weighing/looks-in-words.ts";
import { readWeighing } from "#server/reasoning/explain/weighing/weighing-reader.ts";
import { unweighed } from "#server/reasoning/weigh.ts";
import { neighbourhoodOf } from "#tests/support/build-neighbourhood.ts";
import { aPiece } from "#tests/support/build-piece.ts";

const piece = aPiece({ parts: ["back", "left side", "right side"] });
const weighing = unweighed({
  ...{ piece, neighbourhood: neighbourhoodOf([], []), report: { findings: [] }, stages: [] },
  assumptions: { padYear: 5, padCentury: 25, maxDepth: 8, pathsListed: 12 },
});
const reader = readWeighing(weighing, piece, "1760 to 1775", {
  ...{ labelOf: (term) => `${term} marks`, claimOf: () => undefined, nameOfSource: (source) => source },
});

const aLook = (more: Partial<Look> = {}): Look => ({
  ...{ part: id<"part">("back"), feature: id<"term">("saw"), bits: 0.02, bitsOfState: 0.01, move: "nothing" },
  ...{ pSeen: 0.2, pUnseen: 0.02, ifSeen: 0.032, ifAbsent: 0.181, alsoOn: [], wouldVoid: [] },
  ...more,
});
const looks = (next: readonly Look[], more: Partial<Looks> = {}): Looks => ({
  ...{ next, considered: 40, cut: false },
  leftOut: { answered: 3, notOfPiece: 2, silent: 20, alike: 12, less: 7 },
  ...more,
});
const say = (look: Look) => looksInWords(looks([look]), reader)[0];

describe("[N10] looks in words", () => {
  it("say the part, what to look for, and what each answer would make of the claim", () => {
    expect(say(aLook())).toMatchObject({
      says: "The back: look for saw marks.",
      because: "The probability of 1760 to 1775 is 0.03 if it is there, 0.18 if not.",
    });
  });

  it("name the other parts on which the same would tell", () => {
    const also = [id<"part">("left side"), id<"part">("right side")];
    expect(say(aLook({ alsoOn: also }))?.says).toBe(
      "The back, and also the left side and the right side: look for saw marks.",
    );
  });

  it("say of what state a part is where that is what they tell, and that years stay as they are", () => {
    expect(say(aLook({ bits: 0, bitsOfState: 0.2, ifSeen: 0.1, ifAbsent: 0.1 }))?.because).toBe(
      "It tells whether the part is of the first making; the probability of 1760 to 1775 is 0.10 either way.",
    );
  });

  it("say what an exception would explain", () => {
    const wouldVoid = [
      { claim: id<"claim">("c1"), findings: ["f", "g"] },
      { claim: id<"claim">("c2"), findings: ["g"] },
    ];
    expect(say(aLook({ wouldVoid }))?.because).toBe(
      "If it is there, two things that speak against the claim are explained; the probability of 1760 to 1775 is 0.03 if it is there, 0.18 if not.",
    );
  });

  it("say how many they were chosen from, and what became of the others", () => {
    expect(chosenInWords(looks([aLook()]))).toBe(
      "1 of 40 looks; of the others, 20 would tell nothing, 12 repeat a question or crowd a part and 7 would tell less. Not weighed: 3 answered by what was recorded and 2 of other pieces.",
    );
    expect(chosenInWords(looks([], { cut: true }))).toMatch(
      /^None of 40 looks would tell anything more\..*those that take most trouble were not weighed\.$/,
    );
  });
});
