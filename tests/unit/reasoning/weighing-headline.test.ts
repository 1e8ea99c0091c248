import { describe, expect, it } from "vitest";
import type { Dates } from "#server/domain/weighing/dates.ts";
import { headlineOfWeighing } from "#server/reasoning/explain/weighing/headline.ts";
import { readWeighing } from "#server/reasoning/explain/weighing/weighing-reader.ts";
import { unweighed } from "#server/reasoning/weigh.ts";
import { neighbourhoodOf } from "#tests/support/build-neighbourhood.ts";
import { aPiece, type PieceSketch } from "#tests/support/build-piece.ts";

const none = { from: 1700, step: 1, odds: [], mode: 1700, mean: 1700, credible: { years: [], mass: 1 } };
const datesOf = (claimed: Dates["claimed"]): Dates => ({
  ...{ whole: none, claimed, evidence: 0, parts: [], places: [] },
  ...{ assumedShapes: [], tried: [], takenApart: [] },
});

function say(claimed: Dates["claimed"], sketch: PieceSketch): string {
  const piece = aPiece(sketch);
  const weighing = unweighed({
    ...{ piece, neighbourhood: neighbourhoodOf([], []), report: { findings: [] }, stages: [] },
    assumptions: { padYear: 5, padCentury: 25, maxDepth: 8, pathsListed: 12 },
  });
  const names = { labelOf: (term: string) => term, claimOf: () => undefined, nameOfSource: (s: string) => s };
  return headlineOfWeighing(
    datesOf(claimed),
    undefined,
    readWeighing(weighing, piece, "1760 to 1780", names),
  );
}
const seen: PieceSketch = {
  parts: ["back"],
  observations: [{ id: "o1", part: "back", feature: "feature.arcs" }],
};

describe("[Y8] the weighing as a sentence", () => {
  it("weighs nothing while nothing is recorded, and gives no number", () => {
    const said = say(
      { prior: 0.04, posterior: 0.04, log10: 0 },
      { parts: ["back", "top"], observations: [] },
    );
    expect(said).toBe("Nothing is recorded, so that nothing speaks for 1760 to 1780 or against it.");
  });

  it("says of each number that it is a probability", () => {
    expect(say({ prior: 0.04, posterior: 0.05, log10: 0.1 }, seen)).toBe(
      "The evidence does not discriminate between 1760 to 1780 and other years: probability about 0.05.",
    );
    expect(say({ prior: 0.04, posterior: 0.24, log10: 0.9 }, seen)).toBe(
      "What was seen speaks for 1760 to 1780: probability about 0.24, before anything was seen 0.04.",
    );
  });
});
