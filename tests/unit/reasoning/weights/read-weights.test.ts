import { describe, expect, it } from "vitest";
import { readWeights } from "#server/reasoning/weights/read-weights.ts";
import { unitsOf } from "#server/reasoning/weights/units-of.ts";
import { weightWord } from "#server/reasoning/weights/weight-word.ts";
import type { ClaimSketch } from "#tests/support/build-claim.ts";
import type { ObservationSketch } from "#tests/support/build-piece.ts";
import { subjectOf, weighSubject } from "#tests/support/weigh-sketch.ts";

const claims: readonly ClaimSketch[] = [
  { id: "saw", relation: "introduced", subject: "saw", when: "1790/1800", strength: "firm" },
  { id: "arcs", relation: "requires", subject: "arcs", ways: [["saw"]] },
  { id: "kerfs", relation: "requires", subject: "kerfs", ways: [["saw"]] },
  { id: "bright", relation: "indicates", subject: "bright", states: ["later"], cause: "renewal" },
  { id: "clean", relation: "indicates", subject: "clean", states: ["later"], cause: "renewal" },
  { id: "old", relation: "current", subject: "old", when: "1740/1790" },
];
const seen = (feature: string, part = "back"): ObservationSketch => ({
  id: `${part}.${feature}`,
  part,
  feature,
});

function weighed(observations: readonly ObservationSketch[]) {
  const subject = subjectOf(claims, { date: "1760/1775", observations });
  const { posterior, workings } = weighSubject(subject);
  return { units: unitsOf(posterior.model), weights: readWeights(posterior, subject.claimed, workings) };
}

describe("[B12] what weighs as one", () => {
  it("is each thing seen by itself, traces of one tool on a part, and signs of one cause", () => {
    const { units } = weighed(["arcs", "kerfs", "old", "bright", "clean"].map((name) => seen(name)));
    expect(units.map(({ observations, linkedBy }) => [observations.join(), linkedBy])).toEqual([
      ["back.old", undefined],
      ["back.arcs,back.kerfs", "tool"],
      ["back.bright,back.clean", "cause"],
    ]);
  });

  it("is not linked over two parts", () => {
    const { units } = weighed([seen("arcs"), seen("kerfs", "side")]);
    expect(units).toHaveLength(2);
  });
});

describe("[B12] weights", () => {
  it("are what the piece weighs less without the thing, as weighing without it shows", () => {
    const all = [seen("old", "side"), seen("arcs"), seen("bright", "leg")];
    const { weights } = weighed(all);
    for (const { observations, leaveOneOut } of weights.steps) {
      const without = weighed(all.filter(({ id }) => !observations.some((one) => one === id)));
      expect((weights.total as number) - (without.weights.total as number)).toBeCloseTo(
        leaveOneOut as number,
        4,
      );
    }
  });

  it("are nothing for what says nothing, and told by id", () => {
    const { weights } = weighed([seen("plain.b"), seen("plain.a"), seen("old")]);
    expect(
      weights.steps.map(({ observations, leaveOneOut, chain }) => [
        observations.join(),
        leaveOneOut === 0,
        chain === 0,
      ]),
    ).toEqual([
      ["back.old", false, false],
      ["back.plain.a", true, true],
      ["back.plain.b", true, true],
    ]);
  });

  it("[B14] are the same in whatever order the things were recorded", () => {
    const all = [
      seen("old", "side"),
      seen("arcs"),
      seen("kerfs"),
      seen("bright", "leg"),
      seen("clean", "leg"),
    ];
    expect(weighed(all.toReversed()).weights).toEqual(weighed(all).weights);
  });
});

describe("[B12] the word of a weight", () => {
  it.each([
    [0, "slight"],
    [0.499, "slight"],
    [-0.5, "moderate"],
    [0.999, "moderate"],
    [1, "strong"],
    [-1.999, "strong"],
    [2, "very strong"],
    [Number.NEGATIVE_INFINITY, "beyond the model"],
    [Number.NaN, "beyond the model"],
  ])("of %d is %s", (log10, word) => {
    expect(weightWord(log10)).toBe(word);
  });
});
