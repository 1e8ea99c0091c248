import { expect, it } from "vitest";
import { findNearestTerm } from "#server/domain/nearest-term.ts";
import { aTerm } from "#tests/support/build-neighbourhood.ts";

const terms = [
  { ...aTerm("tool.pit-saw", "tool"), label: "pit saw", otherLabels: ["whip saw"] },
  { ...aTerm("tool.band-saw", "tool"), label: "band saw" },
  { ...aTerm("material.mahogany", "material"), label: "mahogany" },
];

it.each([
  ["tool.pit-sow", "tool.pit-saw"],
  ["pit saw", "tool.pit-saw"],
  ["Whip-Saw", "tool.pit-saw"],
  ["whipsaw", "tool.pit-saw"],
  ["bandsaw", "tool.band-saw"],
  ["mahogony", "material.mahogany"],
  ["mahog", undefined],
  ["gilding", undefined],
  ["", undefined],
])("[G26] %s is nearest to %s", (text, id) => {
  expect(findNearestTerm(text, terms)?.id).toBe(id);
});

it("[G26] the nearer of two is taken, and of two equally near the first", () => {
  expect(
    findNearestTerm(
      "tool.bit-saw",
      [terms[1], terms[0]].flatMap((term) => term ?? []),
    )?.id,
  ).toBe("tool.pit-saw");
  expect(findNearestTerm("saw-x", [aTerm("tool.saw-a", "tool"), aTerm("tool.saw-b", "tool")])?.id).toBe(
    "tool.saw-a",
  );
});
